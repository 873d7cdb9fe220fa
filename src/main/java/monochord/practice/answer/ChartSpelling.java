package monochord.practice.answer;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * What a chart prints for a chord whose own spelling is hard to read: one with a double accidental, or with a root such
 * as C flat or E sharp.
 *
 * <p>Common practice, no source.
 */
final class ChartSpelling {
    private static final int C_FLAT = -7;
    private static final int E_SHARP = 11;
    private static final int B_DOUBLE_FLAT = -9;
    private static final int F_DOUBLE_SHARP = 13;
    private static final int SAME_KEY = 12;

    private ChartSpelling() {}

    /** The chord as a chart prints it, if that is another spelling. */
    static Optional<Chord> print(Chord chord) {
        int root = chord.root().fifths();
        int flattest = chord.tones().stream().mapToInt(NoteName::fifths).min().orElse(0);
        int sharpest = chord.tones().stream().mapToInt(NoteName::fifths).max().orElse(0);
        boolean tooFlat = root <= C_FLAT || flattest <= B_DOUBLE_FLAT;
        boolean tooSharp = root >= E_SHARP || sharpest >= F_DOUBLE_SHARP;
        int away = tooFlat ? SAME_KEY : tooSharp ? -SAME_KEY : 0;
        return away == 0 ? Optional.empty() : Optional.of(chord.plus(Interval.simple(away)));
    }
}
