package monochord.lesson;

import java.util.Comparator;
import monochord.text.Phrase;
import monochord.text.SafeText;

/**
 * Something wrong in a lesson file: {@code path:line:column: what is wrong; what to do instead}.
 *
 * @param line from 1
 * @param column from 1, in characters
 * @param what a clause that says what was found
 * @param instead a clause that says what to write
 */
public record Fault(String path, int line, int column, Phrase what, Phrase instead) {
    /** As they stand in the file. */
    public static final Comparator<Fault> IN_ORDER =
            Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column);

    public Fault {
        path = SafeText.oneLine(path);
    }

    /** The whole line. Files hold English note names, so it is for a reader who goes by those. */
    public Phrase phrase() {
        return Phrase.of("{0}:{1}:{2}: {3}; {4}", Phrase.typed(path), line, column, what, instead);
    }

    @Override
    public String toString() {
        return phrase().toString();
    }
}
