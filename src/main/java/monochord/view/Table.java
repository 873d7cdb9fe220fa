package monochord.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;

/**
 * Facts in rows and columns. Cells are put into words for the reader and measured in columns of a terminal before they are
 * laid out, so that no sign, note name or language moves a column.
 *
 * <p>Where the width does not do, the columns first come together, then the last one is wrapped within itself, then the
 * columns that have no room follow on a second line. In plain looks each cell is a line of its own, behind the heading of
 * its column; where no column has a heading, each row is one line.
 */
public final class Table {
    private final List<Column> columns;
    private final List<TableRow> rows = new ArrayList<>();
    private int indent;

    /**
     * One column.
     *
     * @param heading what stands over it, or {@link Phrase#NOTHING}
     * @param right whether its cells end below each other, as numbers do
     * @param least columns of the terminal from its beginning to that of the next, where there is room and its cells are
     *     narrower
     */
    public record Column(Phrase heading, boolean right, int least) {
        public static Column left(Phrase heading) {
            return new Column(heading, false, 0);
        }

        public static Column right(Phrase heading) {
            return new Column(heading, true, 0);
        }

        /** Without a heading. */
        public static Column left() {
            return left(Phrase.NOTHING);
        }

        public Column atLeast(int columns) {
            return new Column(heading, right, columns);
        }
    }

    /** A line of cells, or one phrase across all columns. */
    private record TableRow(List<Phrase> cells, boolean isAcross) {
        List<StyledLine> in(Reader reader) {
            return cells.stream().map(cell -> cell.in(reader)).toList();
        }
    }

    private Table(List<Column> columns) {
        this.columns = columns;
    }

    public static Table of(Column... columns) {
        return new Table(List.of(columns));
    }

    /** So many columns without headings. */
    public static Table of(int columns) {
        return new Table(Stream.generate(Column::left).limit(columns).toList());
    }

    /** Sets the rows in, but not the lines across. */
    public Table indentedBy(int columns) {
        indent = columns;
        return this;
    }

    /** @throws IllegalArgumentException if there are more cells than columns; where there are fewer, the rest stays empty */
    public Table row(List<Phrase> cells) {
        if (cells.size() > columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells in a table of " + columns.size() + " columns");
        }
        rows.add(new TableRow(List.copyOf(cells), false));
        return this;
    }

    public Table row(Phrase... cells) {
        return row(Arrays.asList(cells));
    }

    /** A line over the rows that follow, across all columns. */
    public Table across(Phrase heading) {
        rows.add(new TableRow(List.of(heading), true));
        return this;
    }

    /** Lines no wider than the look allows. */
    public StyledText text(Look look) {
        return look.plain() ? facts(look) : laidOut(look);
    }

    private StyledText laidOut(Look look) {
        List<StyledLine> headings = columns.stream()
                .map(column -> column.heading().styled(Style.QUIET).in(look.reader()))
                .toList();
        List<List<StyledLine>> cells = rows.stream()
                .map(row -> row.isAcross() ? List.<StyledLine>of() : row.in(look.reader()))
                .toList();
        TableLayout layout = new TableLayout(columns, indent, look.width())
                .measure(Stream.concat(Stream.of(headings), cells.stream()).toList());
        StyledText.Builder text = StyledText.builder(look.reader());
        layout.row(headings).forEach(text::line);
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).isAcross()) {
                text.lines(
                        StyledText.of(rows.get(i).cells().get(0), look.reader()).wrapped(look.width()));
            } else {
                layout.row(cells.get(i)).forEach(text::line);
            }
        }
        return text.build();
    }

    private StyledText facts(Look look) {
        boolean headed = columns.stream().anyMatch(column -> !column.heading().isEmpty());
        StyledText.Builder text = StyledText.builder(look.reader());
        for (TableRow row : rows) {
            if (row.isAcross() || !headed) {
                text.line(Phrase.joined(
                        " ",
                        row.cells().stream().filter(cell -> !cell.isEmpty()).toList()));
            } else {
                facts(row.cells(), text);
            }
        }
        return text.build().wrapped(look.width());
    }

    private void facts(List<Phrase> cells, StyledText.Builder text) {
        for (int i = 0; i < cells.size(); i++) {
            Phrase heading = columns.get(i).heading();
            if (!cells.get(i).isEmpty()) {
                text.line(heading.isEmpty() ? cells.get(i) : Phrase.of("{0}: {1}", heading, cells.get(i)));
            }
        }
    }

    /**
     * The rows in blocks of as many columns as the width takes, one block under the other: for a few rows of many columns,
     * such as chords over their numerals. The first columns of each block are those up to {@code labels}, again.
     */
    public StyledText inBlocks(Look look, int labels) {
        List<List<StyledLine>> cells =
                rows.stream().map(row -> row.in(look.reader())).toList();
        StyledText.Builder text = StyledText.builder(look.reader());
        int from = labels;
        while (from < columns.size()) {
            int to = from + 1;
            while (to < columns.size()
                    && block(cells, labels, from, to + 1, look).fits()) {
                to++;
            }
            TableLayout block = block(cells, labels, from, to, look);
            for (List<StyledLine> row : cells) {
                block.row(cut(row, labels, from, to)).forEach(text::line);
            }
            from = to;
        }
        return text.build();
    }

    private TableLayout block(List<List<StyledLine>> cells, int labels, int from, int to, Look look) {
        List<List<StyledLine>> block =
                cells.stream().map(row -> cut(row, labels, from, to)).toList();
        return new TableLayout(cut(columns, labels, from, to), indent, look.width()).measure(block);
    }

    private static <T> List<T> cut(List<T> row, int labels, int from, int to) {
        List<T> cut = new ArrayList<>(row.subList(0, Math.min(labels, row.size())));
        cut.addAll(row.subList(Math.min(from, row.size()), Math.min(to, row.size())));
        return cut;
    }
}
