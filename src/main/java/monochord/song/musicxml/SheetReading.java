package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Walks through the measures of one part and keeps its tune, its chords and its key. */
final class SheetReading {
    private static final String MEASURE = "measure";
    private static final String NOTE = "note";
    private static final String HARMONY = "harmony";
    private static final String DURATION = "duration";
    private static final int FARTHEST_TRANSPOSITION = 48;
    private static final int MOST_SIGNS = 7;

    private final SheetElement score;
    private final Set<Phrase> remarks = new LinkedHashSet<>();
    private final TuneReading tune = new TuneReading(remarks);
    private final ChordsReading chords = new ChordsReading(remarks);
    private final List<Beats> bars = new ArrayList<>();
    private String divisions = "1";
    private Interval sounding = Interval.UNISON;
    private Key key;
    private Beats barStart = Beats.ZERO;
    private Beats now = Beats.ZERO;
    private Beats reached = Beats.ZERO;

    SheetReading(SheetElement score) {
        this.score = score;
    }

    LeadSheet sheet() throws SheetFault {
        for (SheetElement measure : part().parts(MEASURE)) {
            measure(measure);
        }
        BarLengths lengths = BarLengths.of(bars);
        Key concert = key();
        return new LeadSheet(
                title(),
                concert,
                tune.melody(lengths, sounding),
                chords.progression(lengths, concert, sounding),
                List.copyOf(remarks));
    }

    /** The first part with chord symbols. */
    private SheetElement part() throws SheetFault {
        List<SheetElement> parts = score.parts("part").stream()
                .filter(part -> holds(part, NOTE) || holds(part, HARMONY))
                .toList();
        if (parts.isEmpty()) {
            throw new SheetFault(Phrase.of("no notes stand in it"));
        }
        SheetElement first = parts.stream()
                .filter(part -> holds(part, HARMONY))
                .findFirst()
                .orElseThrow(() -> new SheetFault(Phrase.of("no chord symbols stand over its notes")));
        if (parts.size() > 1) {
            remarks.add(Phrase.sentence("Only the first part with chord symbols is read."));
        }
        return first;
    }

    private static boolean holds(SheetElement part, String kind) {
        return part.parts(MEASURE).stream().anyMatch(measure -> measure.has(kind));
    }

    private void measure(SheetElement measure) throws SheetFault {
        barStart = reached;
        now = reached;
        for (SheetElement part : measure.parts()) {
            take(part);
            reached = reached.longerOf(now);
        }
        bars.add(reached.minus(barStart));
    }

    private void take(SheetElement part) throws SheetFault {
        switch (part.name()) {
            case NOTE -> note(part);
            case HARMONY -> harmony(part);
            case "attributes" -> attributes(part);
            case "forward" -> go(Figures.beats(part.text(DURATION), divisions));
            case "backup" -> {
                Beats back = Figures.beats(part.text(DURATION), divisions);
                now = back.compareTo(now.minus(barStart)) > 0 ? barStart : now.minus(back);
            }
            case "barline" -> barline(part);
            default -> {}
        }
    }

    private void barline(SheetElement line) {
        if (line.has("repeat")) {
            remarks.add(Phrase.sentence("Repeats are not played out: each bar is read once."));
        }
    }

    private void go(Beats beats) throws SheetFault {
        now = Figures.counted(now.plus(beats));
    }

    private void note(SheetElement note) throws SheetFault {
        if (note.has("grace") || note.has("cue")) {
            remarks.add(Phrase.sentence("Grace and cue notes are left out."));
            return;
        }
        Beats beats = Figures.beats(note.text(DURATION), divisions);
        tune.take(note, now, beats);
        if (!note.has("chord")) {
            go(beats);
        }
    }

    private void harmony(SheetElement harmony) throws SheetFault {
        String offset = harmony.text("offset");
        boolean later = offset != null && !offset.startsWith("-");
        Beats start = later ? now.plus(Figures.beats(offset, divisions)) : now;
        Key written = key == null ? Key.major(NoteName.C) : key;
        chords.take(HarmonyChord.of(harmony, written), start);
    }

    private void attributes(SheetElement attributes) throws SheetFault {
        divisions = attributes.has("divisions") ? attributes.text("divisions") : divisions;
        for (SheetElement one : attributes.parts("key")) {
            key(one);
        }
        for (SheetElement one : attributes.parts("transpose")) {
            Interval moved = transposition(one);
            if (!moved.equals(sounding) && !bars.isEmpty()) {
                throw new SheetFault(Phrase.of("its transposition changes in bar {0}", bars.size() + 1));
            }
            sounding = moved;
        }
    }

    private void key(SheetElement written) throws SheetFault {
        if (key != null) {
            remarks.add(Phrase.sentence("The key changes on the way; all is read in the first."));
            return;
        }
        int fifths = Figures.whole(written.text("fifths"), MOST_SIGNS, Phrase.of("a key signature"));
        Mode mode = mode(written.text("mode"));
        key = new Key(NoteName.at(fifths - mode.flattest() + Mode.IONIAN.flattest()), mode);
    }

    private Mode mode(String written) {
        try {
            return Mode.parse(written == null ? "major" : written.toLowerCase(Locale.ROOT));
        } catch (Unreadable unreadable) {
            remarks.add(Phrase.sentence("Its mode is not one of the seven; major is taken."));
            return Mode.IONIAN;
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

    private Key key() throws SheetFault {
        Key written = key == null ? Key.major(NoteName.C) : key;
        NoteName tonic = written.tonic().plus(sounding);
        if (Math.abs(tonic.fifths()) > 30) {
            throw new SheetFault(Phrase.of("its transposition leads to no key"));
        }
        return new Key(tonic, written.mode());
    }

    private String title() {
        String work = score.part("work").map(named -> named.text("work-title")).orElse(null);
        String title = work != null ? work : score.text("movement-title");
        return title == null ? "" : SafeText.oneLine(title);
    }
}
