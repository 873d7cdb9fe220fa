package monochord.harmony.melody;

import java.util.Comparator;
import java.util.stream.IntStream;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** Which octave of a name is meant where none is written. */
final class NearestOctave {
    private NearestOctave() {}

    /**
     * The pitch of that name fewest half steps away, of two the one fewest letters away, of two the upper one.
     *
     * @throws IllegalArgumentException if that pitch has no octave from −1 to 10
     */
    static Pitch to(Pitch before, NoteName name) {
        int guess = before.octave();
        int best = IntStream.rangeClosed(guess - 3, guess + 3)
                .boxed()
                .min(Comparator.comparingInt((Integer octave) -> Math.abs(halfSteps(before, name, octave)))
                        .thenComparingInt(octave -> Math.abs(letters(before, name, octave)))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
        return new Pitch(name, best);
    }

    private static int halfSteps(Pitch before, NoteName name, int octave) {
        int inFourth = new Pitch(name, 4).midiNumber();
        return inFourth + 12 * (octave - 4) - before.midiNumber();
    }

    private static int letters(Pitch before, NoteName name, int octave) {
        return 7 * octave + name.letterStep() - before.staffPosition();
    }
}
