package monochord.harmony.voicing;

import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * How far a hand reaches, counted in white keys from thumb to little finger, both included: 8 is an octave, 10 a tenth.
 *
 * <p>The span in half steps is that of the perfect or major interval with this number, so a hand with a reach of 9 plays
 * a major ninth and one with 10 a major tenth.
 *
 * <p>An octave is what every grown hand may be asked for; about a quarter of men and most women cannot play a tenth, and
 * a child reaches a sixth or seventh. Source: Boyle, Boyle and Booker, APPC 2015, spans of 473 pianists.
 *
 * <p>Text form: the number, from {@value #SMALLEST} to {@value #LARGEST}. {@link #parse} reads what {@link #toString}
 * writes.
 *
 * @param steps white keys from {@value #SMALLEST} to {@value #LARGEST}
 */
public record Reach(int steps) {
    public static final int SMALLEST = 5;
    public static final int LARGEST = 12;
    public static final Reach OCTAVE = new Reach(8);

    private static final int[] HALF_STEPS = {0, 2, 4, 5, 7, 9, 11};

    /** @throws IllegalArgumentException if the steps are out of range */
    public Reach {
        if (steps < SMALLEST || steps > LARGEST) {
            throw new IllegalArgumentException(
                    "a reach must be from " + SMALLEST + " to " + LARGEST + " white keys, not " + steps);
        }
    }

    /** @throws Unreadable if the text is no number in the range */
    public static Reach parse(String text) {
        int steps = text.matches("[0-9]{1,2}") ? Integer.parseInt(text) : 0;
        if (steps < SMALLEST || steps > LARGEST) {
            Clause why = Clause.of("expected white keys from {0} to {1}, 8 for an octave", SMALLEST, LARGEST);
            throw Unreadable.because(text, 0, "a reach", why, "reach 9");
        }
        return new Reach(steps);
    }

    /** Half steps from the lowest key of a hand to its highest. */
    public int halfSteps() {
        return 12 * ((steps - 1) / 7) + HALF_STEPS[(steps - 1) % 7];
    }

    /** Whether a hand with this reach plays keys that far apart. */
    public boolean covers(int halfSteps) {
        return halfSteps <= halfSteps();
    }

    /** Whether these half steps ask for more than any grown hand should be asked for. */
    public static boolean isWide(int halfSteps) {
        return !OCTAVE.covers(halfSteps);
    }

    /** {@code an octave}, {@code a tenth}. */
    public Phrase inWords() {
        return MusicWords.oneNumber(steps);
    }

    @Override
    public String toString() {
        return Integer.toString(steps);
    }
}
