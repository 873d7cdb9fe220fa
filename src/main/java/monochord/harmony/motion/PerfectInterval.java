package monochord.harmony.motion;

import monochord.theory.note.Pitch;

/** The perfect interval that two notes sound, compounds counted with it: a twelfth is a fifth, two octaves are one. */
public enum PerfectInterval {
    /** None of the three; a fourth and a diminished fifth are none. */
    NONE(0),
    UNISON(1),
    FIFTH(5),
    OCTAVE(8);

    private static final int OCTAVE_IN_HALF_STEPS = 12;
    private static final int FIFTH_IN_HALF_STEPS = 7;

    private final int number;

    PerfectInterval(int number) {
        this.number = number;
    }

    /** By sound, for parallels are heard however they are spelled; the order of the two notes does not matter. */
    static PerfectInterval between(Pitch one, Pitch other) {
        return between(one.midiNumber(), other.midiNumber());
    }

    /** The same between two keys, as MIDI note numbers. */
    public static PerfectInterval between(int one, int other) {
        int size = Math.abs(one - other);
        if (size == 0) {
            return UNISON;
        }
        return switch (size % OCTAVE_IN_HALF_STEPS) {
            case 0 -> OCTAVE;
            case FIFTH_IN_HALF_STEPS -> FIFTH;
            default -> NONE;
        };
    }

    /** The interval that runs on from the first to the second: a unison and an octave are octaves, or nothing runs on. */
    public static PerfectInterval running(PerfectInterval first, PerfectInterval second) {
        if (first == second) {
            return first;
        }
        return first.isOctave() && second.isOctave() ? OCTAVE : NONE;
    }

    /** Whether it is an octave or a unison. */
    public boolean isOctave() {
        return this == UNISON || this == OCTAVE;
    }

    /** 1, 5 or 8; 0 for none. */
    public int number() {
        return number;
    }
}
