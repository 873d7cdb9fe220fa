package monochord.view.keyboard;

import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A stretch of keyboard and where its keys stand in a line of text. White keys stand {@code pitch} columns apart, a black
 * key between its white neighbours.
 *
 * @param low the lowest key, a white one, as a MIDI note number
 * @param high the highest key, a white one
 * @param pitch columns from one white key to the next, 3 at least
 * @param margin columns before the lowest key
 */
public record KeyboardRange(int low, int high, int pitch, int margin) {
    private static final String BLACK = "010100101010";
    private static final int WHITE_PER_OCTAVE = 7;
    private static final int LEAST_PITCH = 3;
    /** C3. */
    private static final int EMPTY_LOW = 48;
    /** B4. */
    private static final int EMPTY_HIGH = 71;

    public static boolean isBlack(int key) {
        return BLACK.charAt(Math.floorMod(key, 12)) == '1';
    }

    /** The smallest stretch that holds both keys and ends on white ones. */
    static KeyboardRange tight(int lowest, int highest, int pitch) {
        int low = isBlack(lowest) ? lowest - 1 : lowest;
        int high = isBlack(highest) ? highest + 1 : highest;
        return new KeyboardRange(low, high, pitch, pitch / 2);
    }

    /** The stretch out to the edges of the groups of black keys: it begins on C or F and ends on E or B. */
    public static KeyboardRange grouped(int lowest, int highest, int pitch) {
        int low = lowest;
        while (!begins(low)) {
            low--;
        }
        int high = highest;
        while (!begins(high + 1)) {
            high++;
        }
        return new KeyboardRange(low, high, pitch, pitch / 2);
    }

    /** The stretch that holds all marks of some keyboards; two octaves from C3 where nothing is marked. */
    public static KeyboardRange around(List<Drawing> drawings) {
        IntSummaryStatistics keys = drawings.stream()
                .flatMap(drawing -> drawing.marks().stream())
                .mapToInt(MarkedKey::key)
                .summaryStatistics();
        return keys.getCount() == 0
                ? grouped(EMPTY_LOW, EMPTY_HIGH, LEAST_PITCH)
                : grouped(keys.getMin(), keys.getMax(), LEAST_PITCH);
    }

    private static boolean begins(int key) {
        int place = Math.floorMod(key, 12);
        return place == 0 || place == 5;
    }

    KeyboardRange withMargin(int columns) {
        return new KeyboardRange(low, high, pitch, columns);
    }

    /** Where a key's sign begins. */
    int column(int key) {
        int beside = isBlack(key) ? key - 1 : key;
        return margin + pitch * (white(beside) - white(low)) + (isBlack(key) ? pitch / 2 : 0);
    }

    /** White keys below this white key. */
    private static int white(int key) {
        int octave = Math.floorDiv(key, 12);
        int place = Math.floorMod(key, 12);
        return WHITE_PER_OCTAVE * octave
                + (int) BLACK.substring(0, place).chars().filter(c -> c == '0').count();
    }

    IntStream all() {
        return IntStream.rangeClosed(low, high);
    }

    /** Columns up to the end of the string on which the white keys stand. */
    int columns() {
        return column(high) + 1 + pitch / 2;
    }
}
