package monochord.harmony;

import java.util.List;
import java.util.function.Function;

/** Reads the tables that travel with the program: cells parted by tabs; a line that begins with {@code #} is a remark. */
public final class TableText {
    private TableText() {}

    /**
     * @param row what becomes of the cells of a line
     * @throws IllegalArgumentException if a line has other columns
     */
    public static <R> List<R> rows(String text, int columns, Function<String[], R> row) {
        return text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> row.apply(cells(line, columns)))
                .toList();
    }

    private static String[] cells(String line, int columns) {
        String[] cells = line.split("\t");
        if (cells.length != columns) {
            throw new IllegalArgumentException("a row must have " + columns + " columns: " + line);
        }
        return cells;
    }
}
