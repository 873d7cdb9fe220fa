package monochord.harmony.melody;

import java.util.List;
import java.util.Optional;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.Notated;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A tune: one note at a time, with rests between notes where there are any.
 *
 * <p>Text form: {@code note[octave][:beats]} one after another, such as {@code E4:1 D4:1/2 r:1 C4:2}. Without a length a
 * note lasts one beat. Without an octave it is the one nearest to the note before, the first the one nearest to middle
 * C; of two that are as near, the one that is fewer letters away. {@code r} is a rest, {@code .} holds the note before
 * for longer, as across a bar line. Bar lines {@code |} are free; where they stand they are checked: all bars are as
 * long as the second, but the first may be shorter (a pick-up, which comes before the first chord) and the last too.
 * {@link #parse} reads all that {@link #toString} writes.
 *
 * @param notes in order of time
 * @param beats how long the tune is, with the rests at its end
 * @param bar beats in each bar, where bar lines were written
 * @param pickup beats before the first full bar
 */
public record Melody(List<MelodyNote> notes, Beats beats, Optional<Beats> bar, Beats pickup) implements Notated {
    /** The most notes and rests a tune may have. */
    public static final int MOST = 2000;

    private static final int THREE = 3;
    private static final double ALMOST = 1e-9;

    /**
     * One note of a tune.
     *
     * @param start beats from the start of the tune, its pick-up included
     */
    public record MelodyNote(Pitch pitch, Beats start, Beats beats) {
        /** @throws IllegalArgumentException if the note has no length */
        public MelodyNote {
            if (beats.isZero()) {
                throw new IllegalArgumentException("a note must have a length, but " + pitch + " has none");
            }
        }

        public Beats end() {
            return start.plus(beats);
        }
    }

    /** @throws IllegalArgumentException if there is no note, notes overlap, or the tune ends before its last note */
    public Melody {
        notes = List.copyOf(notes);
        Beats reached = Beats.ZERO;
        for (MelodyNote note : notes) {
            if (note.start().compareTo(reached) < 0) {
                throw new IllegalArgumentException(note.pitch() + " begins before the note ahead of it ends");
            }
            reached = note.end();
        }
        if (notes.isEmpty() || beats.compareTo(reached) < 0) {
            throw new IllegalArgumentException("a tune must have a note and last until its last note ends");
        }
    }

    /** @throws Unreadable if the text is not a tune */
    public static Melody parse(String text) {
        return MelodyText.parse(text);
    }

    /** The share of its bars that falls into three: of three quarters all, or half where twice three eighths are heard. */
    public Beats threes() {
        boolean isOfThree = bar.filter(Beats.of(THREE)::equals).isPresent();
        Beats heard = beginningAt(2) >= beginningAt(1.5) ? Beats.ONE : Beats.of(1, 2);
        return isOfThree ? heard : Beats.ZERO;
    }

    /** How many notes begin so many quarters behind a bar line. */
    private long beginningAt(double inBar) {
        return notes.stream()
                .mapToDouble(note -> number(note.start()) - number(pickup))
                .filter(start -> start >= 0 && Math.abs(start % THREE - inBar) < ALMOST)
                .count();
    }

    private static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }

    public Melody plus(Interval interval) {
        List<MelodyNote> moved = notes.stream()
                .map(note -> new MelodyNote(note.pitch().plus(interval), note.start(), note.beats()))
                .toList();
        return new Melody(moved, beats, bar, pickup);
    }

    @Override
    public String write(Signs signs) {
        return MelodyText.write(this, signs);
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
