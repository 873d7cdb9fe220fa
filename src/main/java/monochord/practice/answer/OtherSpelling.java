package monochord.practice.answer;

import java.util.Optional;
import monochord.practice.reading.Tones;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** The same keys by other names, as they are written by players who go by the sound and by charts that are easy to read. */
final class OtherSpelling {
    private static final int C_FLAT = -7;
    private static final int E_SHARP = 11;
    private static final int B_DOUBLE_FLAT = -9;
    private static final int F_DOUBLE_SHARP = 13;
    private static final int SAME_KEY = 12;

    private OtherSpelling() {}

    /** An altered note by its other name; a plain letter is kept. */
    static NoteName of(NoteName note) {
        return note.alteration() == 0 ? note : note.respelled();
    }

    /** As a chart prints it, or with the root kept and every other altered tone by its other name. */
    static Tones of(Chord chord) {
        return inCharts(chord)
                .map(Tones::of)
                .orElseGet(() -> Tones.of(Tones.of(chord).notes().stream()
                        .map(note -> note.equals(chord.root()) ? note : of(note))
                        .toList()));
    }

    /**
     * What a chart prints for a chord whose own spelling is hard to read: one with a double accidental, or with a root such
     * as C flat or E sharp. Common practice, no source.
     */
    static Optional<Chord> inCharts(Chord chord) {
        int root = chord.root().fifths();
        int flattest = chord.tones().stream().mapToInt(NoteName::fifths).min().orElse(0);
        int sharpest = chord.tones().stream().mapToInt(NoteName::fifths).max().orElse(0);
        boolean tooFlat = root <= C_FLAT || flattest <= B_DOUBLE_FLAT;
        boolean tooSharp = root >= E_SHARP || sharpest >= F_DOUBLE_SHARP;
        int away = tooFlat ? SAME_KEY : tooSharp ? -SAME_KEY : 0;
        return away == 0 ? Optional.empty() : Optional.of(chord.plus(Interval.simple(away)));
    }
}
