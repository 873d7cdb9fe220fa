package monochord.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import monochord.theory.note.Unreadable;

/**
 * Comma-separated values: RFC 4180, for spreadsheets.
 *
 * <p>Source: RFC 4180, section 2, for commas, quotes and line ends; OWASP, "CSV Injection", for cells that a spreadsheet would
 * run as a formula.
 */
public final class Csv {
    private static final String END = "\r\n";
    /** With these a formula begins; a tab or an end of a line is passed over before one. The wide ones are typed in Asia. */
    private static final String FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    /** Makes a spreadsheet take a cell for text. */
    private static final String TEXT = "'";

    private Csv() {}

    /** One row with its end; no cell of it is run as a formula. */
    public static String row(List<String> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",")) + END;
    }

    private static String cell(String text) {
        String safe = !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? TEXT + text : text;
        boolean isPlain = safe.chars().noneMatch(c -> c == ',' || c == ';' || c == '"' || c == '\r' || c == '\n');
        return isPlain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    /**
     * A row as it was read.
     *
     * @param start index of its first character
     * @param end index behind its end
     */
    public record CsvRow(int start, int end, List<String> cells) {
        public CsvRow {
            cells = List.copyOf(cells);
        }

        /** Whether nothing stands in it. */
        public boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /**
     * All rows; ends of lines may be those of any system.
     *
     * @param separator a comma, or what a spreadsheet of another country puts there
     * @throws Unreadable at a quote that is not closed, or behind one that is
     */
    public static List<CsvRow> rows(String text, char separator) {
        List<CsvRow> rows = new ArrayList<>();
        rows(text, separator, rows::add);
        return rows;
    }

    /** The same one by one; those before the place that cannot be read come first. */
    public static void rows(String text, char separator, Consumer<CsvRow> each) {
        int place = 0;
        while (place < text.length()) {
            CsvRow row = new CsvScanner(text, separator, place).row();
            each.accept(row);
            place = row.end();
        }
    }

    /** Reads one row. */
    private static final class CsvScanner {
        private final String text;
        private final char separator;
        private final int start;
        private int place;

        CsvScanner(String text, char separator, int start) {
            this.text = text;
            this.separator = separator;
            this.start = start;
            this.place = start;
        }

        CsvRow row() {
            List<String> cells = new ArrayList<>(List.of(cell()));
            while (place < text.length() && text.charAt(place) == separator) {
                place++;
                cells.add(cell());
            }
            if (text.startsWith(END, place)) {
                place++;
            }
            return new CsvRow(start, Math.min(place + 1, text.length()), cells);
        }

        private String cell() {
            if (place < text.length() && text.charAt(place) == '"') {
                return quoted();
            }
            int from = place;
            while (place < text.length() && !isEnd()) {
                place++;
            }
            return text.substring(from, place);
        }

        private boolean isEnd() {
            char c = text.charAt(place);
            return c == separator || c == '\r' || c == '\n';
        }

        private String quoted() {
            int opened = place++;
            StringBuilder cell = new StringBuilder();
            int close = text.indexOf('"', place);
            while (close >= 0 && text.startsWith("\"\"", close)) {
                cell.append(text, place, close + 1);
                place = close + 2;
                close = text.indexOf('"', place);
            }
            if (close < 0) {
                throw refused(opened, "the quotation mark is never closed");
            }
            cell.append(text, place, close);
            place = close + 1;
            if (place < text.length() && !isEnd()) {
                throw refused(place, "nothing may follow a closed quotation mark");
            }
            return cell.toString();
        }

        private Unreadable refused(int at, String why) {
            return Unreadable.because(text, at, "a list", why, "7b-04,Ana,Thursday");
        }
    }
}
