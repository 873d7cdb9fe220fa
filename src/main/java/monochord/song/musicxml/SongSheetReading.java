package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.song.BarDraft;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongHead;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Reads one part of a score as a song: bars as they are written, repeats, endings, words, sections. Source: W3C MusicXML 4.0. */
final class SongSheetReading {
    private static final int FARTHEST_TRANSPOSITION = 48;
    private static final int MOST_SIGNS = 7;
    private static final int MOST_BARS = 4000;
    private static final int FASTEST = 400;
    private static final int BARS_OF_A_LINE = 4;

    private final SheetElement score;
    private final Set<Phrase> remarks = new LinkedHashSet<>();
    private final List<SheetBar> bars = new ArrayList<>();
    private final SheetMeasures measures = new SheetMeasures(remarks, bars);
    private Integer fifths;
    private String mode;
    private SongMetre metre;
    private int tempo;
    private boolean hasLines;

    SongSheetReading(SheetElement score) {
        this.score = score;
    }

    Song song() throws SheetFault {
        for (SheetElement measure : part().parts("measure")) {
            if (bars.size() >= MOST_BARS) {
                throw new SheetFault(Phrase.of("it has more than {0} bars", MOST_BARS));
            }
            measure(measure);
        }
        if (bars.stream().allMatch(bar -> bar.draft.isEmpty())) {
            throw new SheetFault(Phrase.of("its bars are empty"));
        }
        SongMetre its = metre == null ? SongMetre.COMMON : metre;
        if (!hasLines) {
            breakLines(its);
        }
        splitBars(its);
        List<Section> sections = Section.atMost(new SheetForm(bars, its, remarks).sections(), remarks::add);
        SongHead head = new SongHead(title(), composer(), key(), its, tempo, "");
        return new Song(head, List.of(), sections, List.of(), List.of(), List.copyOf(remarks));
    }

    /** The first part with chord symbols, else the first with notes. */
    private SheetElement part() throws SheetFault {
        List<SheetElement> parts = score.parts("part").stream()
                .filter(part -> holds(part, "note") || holds(part, "harmony"))
                .toList();
        if (parts.isEmpty()) {
            throw new SheetFault(Phrase.of("no notes stand in it"));
        }
        Optional<SheetElement> withChords =
                parts.stream().filter(part -> holds(part, "harmony")).findFirst();
        if (parts.size() > 1) {
            remarks.add(
                    withChords.isPresent()
                            ? Phrase.sentence("Only the first part with chord symbols is read.")
                            : Phrase.sentence("Of its {0} parts the first is read.", parts.size()));
        }
        return withChords.orElse(parts.get(0));
    }

    private static boolean holds(SheetElement part, String kind) {
        return part.parts("measure").stream().anyMatch(measure -> measure.has(kind));
    }

    private void measure(SheetElement measure) throws SheetFault {
        measures.begin();
        for (SheetElement part : measure.parts()) {
            switch (part.name()) {
                case "attributes" -> attributes(part);
                case "barline" -> barline(part);
                case "direction" -> direction(part);
                case "sound" -> sound(part);
                case "print" -> print(part);
                default -> measures.take(part);
            }
        }
        measures.end(metre == null ? SongMetre.COMMON.bar() : metre.bar());
    }

    private void print(SheetElement print) {
        boolean isNew = "yes".equals(print.attribute("new-system")) || "yes".equals(print.attribute("new-page"));
        if (isNew && !bars.isEmpty()) {
            bars.get(bars.size() - 1).draft.endsLine = true;
            hasLines = true;
        }
    }

    private void attributes(SheetElement attributes) throws SheetFault {
        measures.divide(attributes);
        for (SheetElement one : attributes.parts("key")) {
            int signs = Figures.whole(one.text("fifths"), MOST_SIGNS, Phrase.of("a key signature"));
            if (fifths != null && signs != fifths) {
                remarks.add(Phrase.sentence(
                        "The key changes in bar {0}; its notes are read so, its numerals stay in the first.",
                        bars.size() + 1));
            } else if (fifths == null) {
                fifths = signs;
                mode = one.text("mode");
            }
        }
        for (SheetElement one : attributes.parts("time")) {
            metre(one);
        }
        for (SheetElement one : attributes.parts("transpose")) {
            measures.transpose(transposition(one), bars.isEmpty());
        }
    }

    private void metre(SheetElement time) throws SheetFault {
        int beats = 0;
        for (String part : String.valueOf(time.text("beats")).split("\\+")) {
            beats += Figures.whole(part.strip(), 64, Phrase.of("a metre"));
        }
        int value = Figures.whole(time.text("beat-type"), 32, Phrase.of("a metre"));
        if (beats < 1 || beats > 64 || value < 1 || Integer.bitCount(value) != 1) {
            remarks.add(Phrase.sentence("A metre of {0} in {1} is not read.", beats, value));
            return;
        }
        SongMetre read = new SongMetre(beats, value);
        if (metre == null) {
            metre = read;
        } else if (!metre.equals(read)) {
            remarks.add(Phrase.sentence(
                    "The metre changes in bar {0}; its bars are as long as they are.", bars.size() + 1));
        }
    }

    private static Interval transposition(SheetElement written) throws SheetFault {
        int halfSteps = Figures.whole(written.text("chromatic"), FARTHEST_TRANSPOSITION, Phrase.of("a transposition"));
        int letters = written.has("diatonic")
                ? Figures.whole(written.text("diatonic"), FARTHEST_TRANSPOSITION, Phrase.of("a transposition"))
                : Math.round(halfSteps * 7 / 12f);
        int octaves = Figures.whole(written.text("octave-change"), 4, Phrase.of("a transposition"));
        return new Interval(7 * halfSteps - 12 * letters, 7 * letters - 4 * halfSteps + octaves);
    }

    private void barline(SheetElement line) throws SheetFault {
        SheetBar bar = measures.bar();
        Optional<SheetElement> repeat = line.part("repeat");
        if (repeat.filter(sign -> "forward".equals(sign.attribute("direction"))).isPresent()) {
            bar.draft.opens = true;
        } else if (repeat.isPresent()) {
            int times = Figures.whole(repeat.get().attribute("times"), 32, Phrase.of("a repeat"));
            bar.draft.times = Math.max(2, times);
        }
        Optional<SheetElement> ending = line.part("ending").filter(sign -> "start".equals(sign.type()));
        if (ending.isPresent()) {
            String numbers = String.valueOf(ending.get().attribute("number")).replaceAll("\\s+", "");
            bar.draft.ending = numbers.matches("\\d{1,2}(?:[,-]\\d{1,2}){0,8}") ? numbers : "1";
        }
        String style = line.text("bar-style");
        boolean isLeft = "left".equals(line.attribute("location"));
        bar.draft.endsPart |=
                !isLeft && style != null && style.matches("light-light|light-heavy|heavy-.*") && bar.draft.times == 0;
    }

    private void direction(SheetElement direction) {
        for (SheetElement type : direction.parts("direction-type")) {
            for (SheetElement one : type.parts()) {
                switch (one.name()) {
                    case "rehearsal" -> measures.bar().rehearsal = name(one.text());
                    case "segno" -> measures.bar().marks.add(SheetBar.RepeatMark.SEGNO);
                    case "coda" -> measures.bar().marks.add(SheetBar.RepeatMark.CODA);
                    case "words" -> SheetJumps.words(one.text(), measures.bar().marks);
                    case "metronome" -> metronome(one);
                    default -> {}
                }
            }
        }
        for (SheetElement one : direction.parts("sound")) {
            sound(one);
        }
    }

    /** A section is never called as the list of changes is. */
    private static String name(String text) {
        String name = SafeText.oneLine(text).strip();
        return name.equalsIgnoreCase(Song.CHANGES) ? name + " 1" : name;
    }

    private void sound(SheetElement sound) {
        SheetJumps.sound(sound, measures.bar().marks);
        if (sound.attribute("tempo") != null) {
            tempo(sound.attribute("tempo"), 1);
        }
    }

    private void metronome(SheetElement metronome) {
        double quarters =
                "half".equals(metronome.text("beat-unit")) ? 2 : "eighth".equals(metronome.text("beat-unit")) ? 0.5 : 1;
        tempo(metronome.text("per-minute"), metronome.has("beat-unit-dot") ? quarters * 1.5 : quarters);
    }

    /** @param quarters that one of those counted lasts */
    private void tempo(String perMinute, double quarters) {
        if (tempo == 0 && perMinute != null && perMinute.matches("\\d{1,3}(?:\\.\\d{1,4})?")) {
            double beats = Double.parseDouble(perMinute) * quarters;
            long rounded = Math.round(metre != null && metre.isCompound() ? beats / 1.5 : beats);
            tempo = rounded >= 1 && rounded <= FASTEST ? (int) rounded : 0;
        }
    }

    private void breakLines(SongMetre its) {
        int first = bars.get(0).draft.beats().compareTo(its.bar()) < 0 ? 1 : 0;
        for (int i = first + BARS_OF_A_LINE - 1; i < bars.size(); i += BARS_OF_A_LINE) {
            bars.get(i).draft.endsLine = true;
        }
    }

    /** Bars that are short or long are said; they are as long as they are written. */
    private void splitBars(SongMetre its) {
        for (int i = 1; i < bars.size(); i++) {
            BarDraft before = bars.get(i - 1).draft;
            BarDraft bar = bars.get(i).draft;
            Beats both = before.beats().plus(bar.beats());
            boolean isSplit = both.equals(its.bar()) && i > 1 && (before.times > 0 || bar.opens);
            if (isSplit) {
                remarks.add(
                        Phrase.sentence("Bar {0} is split at a repeat sign; both halves are taken as they stand.", i));
            }
        }
    }

    private Key key() throws SheetFault {
        Mode its = mode(mode);
        int signs = fifths == null ? 0 : fifths;
        NoteName tonic =
                NoteName.at(signs - its.flattest() + Mode.IONIAN.flattest()).plus(measures.sounding());
        if (Math.abs(tonic.fifths()) > 30) {
            throw new SheetFault(Phrase.of("its transposition leads to no key"));
        }
        return new Key(tonic, its);
    }

    private static Mode mode(String written) {
        try {
            return written == null ? Mode.IONIAN : Mode.parse(written.toLowerCase(java.util.Locale.ROOT));
        } catch (monochord.theory.note.Unreadable none) {
            return Mode.IONIAN;
        }
    }

    private String title() {
        String work = score.part("work").map(named -> named.text("work-title")).orElse(null);
        String title = work != null && !work.isBlank() ? work : score.text("movement-title");
        return title == null ? "" : SafeText.oneLine(title);
    }

    private String composer() {
        return score.parts("identification").stream()
                .flatMap(one -> one.parts("creator").stream())
                .filter(one -> one.type() == null || one.type().equals("composer"))
                .map(one -> SafeText.oneLine(one.text()))
                .findFirst()
                .orElse("");
    }
}
