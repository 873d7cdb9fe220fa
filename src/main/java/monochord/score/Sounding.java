package monochord.score;

import java.util.Comparator;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * One note of a score with its place in time.
 *
 * <p>Ordered by when it starts, then from the bottom up, then by hand.
 *
 * @param start beats from the beginning of the score
 * @param length beats, more than none
 * @param label the chord symbol or word the note stands under, empty where there is none
 */
public record Sounding(Pitch pitch, Beats start, Beats length, Hand hand, String label)
        implements Comparable<Sounding> {
    private static final Comparator<Sounding> ORDER = Comparator.comparing(Sounding::start)
            .thenComparing(Sounding::pitch)
            .thenComparing(Sounding::hand)
            .thenComparing(Sounding::length)
            .thenComparing(Sounding::label);

    public Beats end() {
        return start.plus(length);
    }

    @Override
    public int compareTo(Sounding other) {
        return ORDER.compare(this, other);
    }
}
