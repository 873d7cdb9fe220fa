package monochord.song.musicxml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import monochord.song.BarDraft;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** Reads notes, chords and words of one measure after the other: the first voice, of notes struck together the top one. */
final class SheetMeasures {
    private static final int MOST_NOTES = 20_000;
    private static final int MOST_IN_A_BAR = 256;
    private static final int SMALLEST_PART = 32;
    private static final int MOST_BEATS = 999;

    private final Set<Phrase> remarks;
    private final List<SheetBar> bars;
    private SheetBar bar = new SheetBar();
    private String divisions = "1";
    private Interval sounding = Interval.UNISON;
    private String voice;
    private BarDraft.Sound last;
    private Beats now = Beats.ZERO;
    private Beats reached = Beats.ZERO;
    private int count;

    SheetMeasures(Set<Phrase> remarks, List<SheetBar> bars) {
        this.remarks = remarks;
        this.bars = bars;
    }

    /** The one that is being read. */
    SheetBar bar() {
        return bar;
    }

    Interval sounding() {
        return sounding;
    }

    void begin() {
        bar = new SheetBar();
        now = Beats.ZERO;
        reached = Beats.ZERO;
    }

    void divide(SheetElement attributes) {
        divisions = attributes.has("divisions") ? attributes.text("divisions") : divisions;
    }

    void transpose(Interval interval, boolean isFirst) throws SheetFault {
        if (!isFirst && !interval.equals(sounding)) {
            throw new SheetFault(Phrase.of("its transposition changes in bar {0}", bars.size() + 1));
        }
        sounding = interval;
    }

    void take(SheetElement part) throws SheetFault {
        switch (part.name()) {
            case "note" -> note(part);
            case "harmony" -> harmony(part);
            case "forward" -> now = Figures.counted(now.plus(length(part)));
            case "backup" -> {
                Beats back = length(part);
                now = back.compareTo(now) > 0 ? Beats.ZERO : now.minus(back);
            }
            default -> {}
        }
        reached = reached.longerOf(now);
    }

    private Beats length(SheetElement part) throws SheetFault {
        Beats beats = Figures.beats(part.text("duration"), divisions);
        if (beats.numerator() > MOST_BEATS * beats.denominator()) {
            throw new SheetFault(Phrase.of("a length in it cannot be counted"));
        }
        return beats;
    }

    /** A bar in which nothing is written is as long as the metre says. */
    void end(Beats full) {
        Beats end = reached;
        if (end.isZero()
                || bar.draft.symbols.stream().anyMatch(symbol -> symbol.start().compareTo(end) >= 0)) {
            reached = reached.longerOf(full);
        }
        rest(reached);
        bars.add(bar);
    }

    private void note(SheetElement note) throws SheetFault {
        if (note.has("grace") || note.has("cue")) {
            remarks.add(Phrase.sentence("Grace and cue notes are left out."));
            return;
        }
        Beats beats = length(note);
        boolean isChord = note.has("chord");
        boolean sounds = note.has("pitch") && !"slash".equals(note.text("notehead")) && !beats.isZero();
        if (sounds && isVoice(note)) {
            if (isChord) {
                remarks.add(Phrase.sentence("Of notes struck together the top one is read."));
                raise(note);
            } else {
                add(note, beats);
            }
        }
        now = isChord ? now : Figures.counted(now.plus(beats));
    }

    private boolean isVoice(SheetElement note) {
        String its = note.has("voice") ? note.text("voice") : "1";
        voice = voice == null ? its : voice;
        if (!voice.equals(its)) {
            remarks.add(Phrase.sentence("Only the first voice is read."));
        }
        return voice.equals(its);
    }

    private void add(SheetElement note, Beats beats) throws SheetFault {
        if (now.compareTo(bar.draft.beats()) < 0) {
            throw new SheetFault(Phrase.of("two notes of one voice sound at once in bar {0}", bars.size() + 1));
        }
        if (beats.denominator() > SMALLEST_PART) {
            throw new SheetFault(Phrase.of("a length in bar {0} cannot be counted", bars.size() + 1));
        }
        if (bar.draft.sounds.size() >= MOST_IN_A_BAR) {
            throw new SheetFault(Phrase.of("bar {0} has more than {1} notes", bars.size() + 1, MOST_IN_A_BAR));
        }
        if (++count > MOST_NOTES) {
            throw new SheetFault(Phrase.of("it has more than {0} notes", MOST_NOTES));
        }
        rest(now);
        Pitch pitch = pitch(note);
        boolean held = last != null && last.ties && isTied(note, "stop") && pitch.equals(last.pitch);
        if (held && bar.draft.sounds.contains(last)) {
            last.beats = last.beats.plus(beats);
            last.ties = isTied(note, "start");
            return;
        }
        last = new BarDraft.Sound(pitch, beats, held);
        last.ties = isTied(note, "start");
        bar.draft.sounds.add(last);
        bar.sung.add(syllables(note));
    }

    /** Silence up to a time in the bar. */
    private void rest(Beats until) {
        Beats sounded = bar.draft.beats();
        if (sounded.compareTo(until) < 0) {
            bar.draft.sounds.add(new BarDraft.Sound(null, until.minus(sounded), false));
            last = null;
        }
    }

    private void raise(SheetElement note) throws SheetFault {
        Pitch pitch = pitch(note);
        int index = bar.draft.sounds.size() - 1;
        if (index >= 0 && last != null && pitch.compareTo(last.pitch) > 0) {
            last = new BarDraft.Sound(pitch, last.beats, false);
            last.ties = isTied(note, "start");
            bar.draft.sounds.set(index, last);
        }
    }

    private static boolean isTied(SheetElement note, String way) {
        return note.parts("tie").stream().anyMatch(tie -> way.equals(tie.type()));
    }

    private Pitch pitch(SheetElement note) throws SheetFault {
        SheetElement written = note.part("pitch").orElseThrow();
        int octave = Figures.whole(written.text("octave"), 1_000_000, Phrase.of("an octave"));
        if (octave < 0 || octave > 9) {
            throw new SheetFault(Phrase.of("a note in it has the octave {0}; 0 to 9 are in use", octave));
        }
        try {
            return new Pitch(Figures.note(written.text("step"), written.text("alter")), octave).plus(sounding);
        } catch (IllegalArgumentException outOfReach) {
            throw new SheetFault(Phrase.of("its transposition leads past the highest or lowest octave"));
        }
    }

    private static Map<String, SheetBar.Syllable> syllables(SheetElement note) {
        Map<String, SheetBar.Syllable> sung = new HashMap<>();
        for (SheetElement lyric : note.parts("lyric")) {
            String verse = lyric.attribute("number") == null ? "1" : lyric.attribute("number");
            String text = String.join(
                    "~", lyric.parts("text").stream().map(SheetElement::text).toList());
            String way = lyric.text("syllabic");
            boolean goesOn = "begin".equals(way) || "middle".equals(way);
            if (!text.isBlank() && verse.matches("\\d{1,2}")) {
                sung.put(verse, new SheetBar.Syllable(written(text), goesOn, lyric.has("extend")));
            }
        }
        return sung;
    }

    private static String written(String text) {
        return SafeText.oneLine(text)
                .strip()
                .replaceAll("[_*|]", "")
                .replace("-", "\\-")
                .replaceAll("\\s+", "~");
    }

    private void harmony(SheetElement harmony) throws SheetFault {
        String offset = harmony.text("offset");
        boolean later = offset != null && !offset.startsWith("-");
        Beats start = later ? now.plus(Figures.beats(offset, divisions)) : now;
        boolean isSilence = "none".equals(harmony.text("kind"));
        Optional<Chord> chord = HarmonyChord.of(harmony, Key.major(NoteName.C));
        if (chord.isEmpty() && !isSilence) {
            remarks.add(Phrase.sentence("A harmony without a chord symbol is left out; the chord before it goes on."));
            return;
        }
        if (bar.draft.symbols.size() >= MOST_IN_A_BAR) {
            throw new SheetFault(Phrase.of("bar {0} has more than {1} chord symbols", bars.size() + 1, MOST_IN_A_BAR));
        }
        String symbol = chord.map(its -> its.plus(sounding).toString()).orElse("r");
        bar.draft.symbols.removeIf(before -> before.start().equals(start));
        bar.draft.symbols.add(new BarDraft.Symbol(symbol, start));
    }
}
