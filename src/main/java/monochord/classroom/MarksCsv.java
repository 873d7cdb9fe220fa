package monochord.classroom;

import java.util.List;
import java.util.Optional;
import monochord.classroom.MarkedAnswer.MarkedTry;
import monochord.text.Csv;
import monochord.text.SafeText;

/** Marks as comma-separated values, a row for each answer, for a teacher's spreadsheet. */
public final class MarksCsv {
    private static final List<String> HEAD = List.of(
            "assignment",
            "code",
            "item",
            "skill",
            "subject",
            "key",
            "answer",
            "tries",
            "verdict",
            "misconception",
            "expected",
            "file");

    private MarksCsv() {}

    /** The names of the columns. */
    public static String head() {
        return Csv.row(HEAD);
    }

    /** All answers of one file. */
    public static String rows(MarkedHandIn marked) {
        StringBuilder rows = new StringBuilder();
        marked.answers().forEach(answer -> rows.append(row(answer, marked.file())));
        return rows.toString();
    }

    private static String row(MarkedAnswer answer, String file) {
        Optional<MarkedTry> last = answer.last();
        return Csv.row(List.of(
                answer.assignment(),
                answer.code().text(),
                Integer.toString(answer.item()),
                answer.question().skillId(),
                answer.question().subject(),
                answer.question().key().toString(),
                SafeText.clean(last.map(MarkedTry::answer).orElse("")),
                Integer.toString(answer.tries().size()),
                last.map(one -> one.verdict().grade().toString()).orElse(""),
                last.map(one -> one.verdict().misconception()).orElse(""),
                answer.question().expected(),
                SafeText.clean(file)));
    }
}
