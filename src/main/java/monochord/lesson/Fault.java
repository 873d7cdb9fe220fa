package monochord.lesson;

import java.util.Comparator;
import monochord.text.SafeText;

/**
 * Something wrong in a lesson file: {@code path:line:column: what is wrong; what to do instead}.
 *
 * @param line from 1
 * @param column from 1, in characters
 * @param what a clause that says what was found
 * @param instead a clause that says what to write
 */
public record Fault(String path, int line, int column, String what, String instead) {
    /** As they stand in the file. */
    public static final Comparator<Fault> IN_ORDER =
            Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column);

    public Fault {
        path = SafeText.oneLine(path);
        what = SafeText.oneLine(what);
        instead = SafeText.oneLine(instead);
    }

    @Override
    public String toString() {
        return path + ":" + line + ":" + column + ": " + what + "; " + instead;
    }
}
