package monochord.view;

import java.util.ArrayList;
import java.util.List;
import monochord.text.StyledLine;
import monochord.text.Wrap;
import monochord.view.Table.Column;

/** Where the columns of a {@link Table} stand, and its rows as lines. */
final class TableLayout {
    private static final int GAP = 2;
    /** Columns of the terminal below which a cell is no longer wrapped within itself. */
    private static final int NARROWEST_CELL = 20;
    /** The same while columns are wider than they need to be. */
    private static final int ROOMY_CELL = 40;

    private final List<Column> columns;
    private final int indent;
    private final int width;
    private int[] widths;
    /** From the beginning of each column to that of the next; 0 for a column without a single cell. */
    private int[] places;
    /** How many columns stand below each other; the rest follows on a second line. */
    private int aligned;

    TableLayout(List<Column> columns, int indent, int width) {
        this.columns = columns;
        this.indent = indent;
        this.width = width;
    }

    /** Finds the places of the columns for these rows; a row may have fewer cells. */
    TableLayout measure(List<List<StyledLine>> rows) {
        widths = new int[columns.size()];
        for (List<StyledLine> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], row.get(i).columns());
            }
        }
        places(true);
        if (!lastHas(ROOMY_CELL)) {
            places(false);
        }
        aligned = columns.size();
        while (!lastHas(NARROWEST_CELL) && aligned > 1 && indent + begin(aligned - 1) + widths[aligned - 1] > width) {
            aligned--;
        }
        return this;
    }

    private int last() {
        return columns.size() - 1;
    }

    /** Whether the last column has all the room it needs, or so much that its cells can be wrapped within it. */
    private boolean lastHas(int room) {
        return indent + begin(last()) + Math.min(room, widths[last()]) <= width;
    }

    private void places(boolean roomy) {
        places = new int[columns.size()];
        for (int i = 0; i < places.length; i++) {
            boolean holds = roomy && widths[i] < columns.get(i).least();
            places[i] = widths[i] == 0 ? 0 : holds ? columns.get(i).least() : widths[i] + GAP;
        }
    }

    private int begin(int column) {
        int begin = 0;
        for (int i = 0; i < column; i++) {
            begin += places[i];
        }
        return begin;
    }

    /** Whether every row is one line within the width. */
    boolean fits() {
        return indent + begin(last()) + widths[last()] <= width;
    }

    /** One row as one or more lines; none where all its cells are empty. */
    List<StyledLine> row(List<StyledLine> cells) {
        List<StyledLine> lines = new ArrayList<>();
        if (aligned < columns.size()) {
            StyledLine first = before(cells, Math.min(aligned, cells.size()));
            lines.addAll(Wrap.line(first, width, indent + GAP));
            lines.addAll(behind(cells.subList(Math.min(aligned, cells.size()), cells.size())));
        } else {
            lines.addAll(inOneLine(cells));
        }
        lines.removeIf(StyledLine::isBlank);
        return lines;
    }

    /** Only the last column may be wider than its room. */
    private List<StyledLine> inOneLine(List<StyledLine> cells) {
        StyledLine line = before(cells, Math.min(last(), cells.size()));
        if (cells.size() <= last()) {
            return List.of(line.stripTrailing());
        }
        int hang = indent + begin(last());
        StyledLine cell = placed(cells.get(last()), last());
        List<StyledLine> lines = new ArrayList<>();
        for (StyledLine part : Wrap.line(cell, width - hang, 0)) {
            StyledLine start = lines.isEmpty() ? line : StyledLine.EMPTY;
            lines.add(start.plus(spaces(hang - start.columns())).plus(part).stripTrailing());
        }
        return lines;
    }

    /** The first so many cells, each in its place. */
    private StyledLine before(List<StyledLine> cells, int count) {
        StyledLine line = spaces(indent);
        for (int i = 0; i < count; i++) {
            line = line.plus(spaces(indent + begin(i) - line.columns())).plus(placed(cells.get(i), i));
        }
        return line;
    }

    private StyledLine placed(StyledLine cell, int column) {
        return columns.get(column).right()
                ? spaces(widths[column] - cell.columns()).plus(cell)
                : cell;
    }

    /** The cells that had no room, one behind the other. */
    private List<StyledLine> behind(List<StyledLine> cells) {
        StyledLine line = spaces(indent + GAP);
        boolean first = true;
        for (StyledLine cell : cells) {
            if (cell.columns() > 0) {
                line = (first ? line : line.plus(spaces(GAP))).plus(cell);
                first = false;
            }
        }
        return Wrap.line(line, width, indent + 2 * GAP);
    }

    private static StyledLine spaces(int columns) {
        return StyledLine.of(" ".repeat(Math.max(0, columns)));
    }
}
