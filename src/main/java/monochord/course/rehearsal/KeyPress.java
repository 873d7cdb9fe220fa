package monochord.course.rehearsal;

/**
 * A key that went down in a round.
 *
 * @param key as a MIDI note number
 * @param down milliseconds after the first full bar began to be heard, below 0 before
 * @param up the same for when it was let go; positive infinity while it is held
 */
public record KeyPress(int key, double down, double up) {
    boolean isDownBetween(double from, double to) {
        return down <= to && up >= from;
    }

    int pitchClass() {
        return Math.floorMod(key, 12);
    }
}
