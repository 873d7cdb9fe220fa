package monochord.harmony.melody;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.theory.note.Beats;

/** Cuts the notes of a tune where the chord changes under them. */
final class NotesOverChords {
    private final Melody melody;
    private final Metre metre;
    private final List<ChordSpan> spans;
    private final List<NoteOverChord> cut = new ArrayList<>();
    private int under;

    private NotesOverChords(Melody melody, Beats bar, List<ChordSpan> spans) {
        this.melody = melody;
        this.metre = new Metre(bar);
        this.spans = spans;
    }

    static List<NoteOverChord> of(Melody melody, Progression progression) {
        Beats bar = Fit.bar(melody, progression);
        return of(melody, bar, rounds(melody, progression, bar));
    }

    static List<NoteOverChord> of(Melody melody, Beats bar, List<ChordSpan> spans) {
        return of(melody, bar, spans, 0, melody.notes().size() - 1);
    }

    /** @param spans the chords in order of time, from the start of the tune after its pick-up */
    static List<NoteOverChord> of(Melody melody, Beats bar, List<ChordSpan> spans, int fromNote, int toNote) {
        return new NotesOverChords(melody, bar, spans).cut(fromNote, toNote);
    }

    /** The chords, gone round as often as the tune asks. */
    static List<ChordSpan> rounds(Melody melody, Progression progression, Beats bar) {
        List<ChordSpan> once = ChordSpan.of(progression, bar);
        Beats length = bar.times(progression.bars().size());
        Beats wanted = melody.beats().minus(melody.pickup());
        List<ChordSpan> all = new ArrayList<>();
        for (int round = 0; round < Fit.MOST_ROUNDS && length.times(round).compareTo(wanted) < 0; round++) {
            Beats offset = length.times(round);
            once.forEach(span -> all.add(
                    new ChordSpan(span.index(), span.chord(), span.start().plus(offset), span.beats())));
        }
        return all;
    }

    private List<NoteOverChord> cut(int fromNote, int toNote) {
        for (int i = fromNote; i <= toNote; i++) {
            cut(i, melody.notes().get(i));
        }
        return cut;
    }

    private void cut(int index, MelodyNote note) {
        Beats now = note.start();
        while (now.compareTo(note.end()) < 0) {
            ChordSpan span = spanAt(now);
            Beats change = nextChange(now, span);
            Beats end = change != null && change.compareTo(note.end()) < 0 ? change : note.end();
            boolean held = !now.equals(note.start());
            cut.add(new NoteOverChord(index, note.pitch(), now, end.minus(now), held, span, strength(now, span)));
            now = end;
        }
    }

    private ChordSpan spanAt(Beats time) {
        if (time.compareTo(melody.pickup()) < 0) {
            return null;
        }
        Beats here = time.minus(melody.pickup());
        while (under < spans.size() && spans.get(under).end().compareTo(here) <= 0) {
            under++;
        }
        return under < spans.size() ? spans.get(under) : null;
    }

    /** When the chord under a note gives way to the next or the first begins, as the tune counts; or null. */
    private Beats nextChange(Beats now, ChordSpan span) {
        if (span != null) {
            return span.end().plus(melody.pickup());
        }
        return now.compareTo(melody.pickup()) < 0 ? melody.pickup() : null;
    }

    private int strength(Beats time, ChordSpan span) {
        if (time.compareTo(melody.pickup()) < 0) {
            return metre.strengthBefore(melody.pickup().minus(time));
        }
        Beats here = time.minus(melody.pickup());
        boolean change = span != null && span.start().equals(here);
        return change ? Metre.START : metre.strength(here);
    }
}
