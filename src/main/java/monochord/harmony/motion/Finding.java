package monochord.harmony.motion;

import java.util.List;
import java.util.Locale;

/**
 * Something in the moving of voices that a teacher would mark.
 *
 * @param weight whether it is against the rules in force or only worth a word
 * @param at the number of the chord at which it is heard, from 0: for a change, the one that is reached
 * @param voices those concerned, from 0 at the bottom
 */
public record Finding(FindingKind kind, Weight weight, int at, List<Integer> voices) {
    /** What it is. */
    public enum FindingKind {
        PARALLEL_UNISONS,
        PARALLEL_FIFTHS,
        PARALLEL_OCTAVES,
        /** From a fifth to a twelfth or back, one voice up and one down. */
        CONTRARY_FIFTHS,
        CONTRARY_OCTAVES,
        /** Bass and top go the same way into a fifth, and the top leaps; also called hidden. */
        DIRECT_FIFTHS,
        DIRECT_OCTAVES,
        /** A diminished fifth with the bass that opens into a perfect one. */
        UNEQUAL_FIFTHS,
        /** In one chord a voice sounds above its upper neighbour. */
        CROSSING,
        /** A voice passes the note that its neighbour has just left. */
        OVERLAP,
        /** One voice goes an augmented second or fourth. */
        AUGMENTED_STEP,
        /** Three voices or more go the same way by as many letters. */
        BLOCK;

        /** In small letters with hyphens: {@code parallel-fifths}. */
        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** How much it counts. */
    public enum Weight {
        FAULT,
        REMARK;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Finding {
        voices = List.copyOf(voices);
    }

    public boolean isFault() {
        return weight == Weight.FAULT;
    }
}
