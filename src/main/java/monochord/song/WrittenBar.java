package monochord.song;

/**
 * One bar as it is written, of chords or of a tune, with the signs around it.
 *
 * @param text what stands between its bar lines
 * @param place where that begins in the file
 * @param opens whether a repeat begins before it
 * @param times how often what is repeated is played when a repeat ends behind it, at most {@value #MOST_TIMES}, else 0
 * @param ending the numbers of the ending that begins with it, such as {@code 1} or {@code 1,3}, or nothing
 * @param line whether a double bar line or the end of a line of text comes behind it
 */
public record WrittenBar(String text, Place place, boolean opens, int times, String ending, Behind line) {
    /** More often nothing is repeated. */
    static final int MOST_TIMES = 32;

    public WrittenBar {
        times = Math.min(times, MOST_TIMES);
    }

    /** What comes behind a bar, a repeat aside. */
    public enum Behind {
        BAR_LINE,
        DOUBLE_BAR,
        LINE_END,
        DOUBLE_BAR_AND_LINE_END
    }

    /** Line and column from 1; 0 where the bar stands in no file. */
    public record Place(int line, int column) {
        public static final Place NOWHERE = new Place(0, 0);
    }

    public WrittenBar with(String other) {
        return new WrittenBar(other, place, opens, times, ending, line);
    }

    public boolean endsLine() {
        return line == Behind.LINE_END || line == Behind.DOUBLE_BAR_AND_LINE_END;
    }

    public boolean endsPart() {
        return line == Behind.DOUBLE_BAR || line == Behind.DOUBLE_BAR_AND_LINE_END;
    }

    WrittenBar opening() {
        return new WrittenBar(text, place, true, times, ending, line);
    }

    WrittenBar repeated(int count) {
        return new WrittenBar(text, place, opens, count, ending, line);
    }

    WrittenBar before(Behind next) {
        boolean part = endsPart() || next == Behind.DOUBLE_BAR || next == Behind.DOUBLE_BAR_AND_LINE_END;
        boolean end = endsLine() || next == Behind.LINE_END || next == Behind.DOUBLE_BAR_AND_LINE_END;
        Behind both = part
                ? end ? Behind.DOUBLE_BAR_AND_LINE_END : Behind.DOUBLE_BAR
                : end ? Behind.LINE_END : Behind.BAR_LINE;
        return new WrittenBar(text, place, opens, times, ending, both);
    }

    /** Whether the ending that begins with it is played this time round, from 1. */
    boolean isPlayedIn(int pass) {
        for (String part : ending.split(",")) {
            String[] ends = part.strip().split("-", 2);
            int first = number(ends[0]);
            int last = number(ends[ends.length - 1]);
            if (first <= pass && pass <= last) {
                return true;
            }
        }
        return ending.isEmpty();
    }

    /** With a double bar line behind it in place of a repeat. */
    public WrittenBar endingPart() {
        return new WrittenBar(text, place, opens, 0, ending, line).before(Behind.DOUBLE_BAR);
    }

    private static int number(String digits) {
        return digits.matches("\\d{1,2}") ? Integer.parseInt(digits) : 0;
    }
}
