package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.paper.page.PageText;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Picture;

/** Rows and columns on paper: each column as wide as its widest cell, a thin line below the head and below each row. */
final class PrintedRows {
    private static final double APART = 3;
    private static final double ROW = 4.6;
    private static final double THIN = 0.1;
    /** No cell is broken into lines. */
    private static final double ENDLESS = 10_000;

    private final Handout.HandoutFigure.Rows rows;
    private final Reader reader;
    private final List<Drawn> things = new ArrayList<>();

    private PrintedRows(Handout.HandoutFigure.Rows rows, Reader reader) {
        this.rows = rows;
        this.reader = reader;
    }

    static Picture of(Handout.HandoutFigure.Rows rows, Reader reader) {
        return new PrintedRows(rows, reader).picture();
    }

    private Picture picture() {
        List<List<Picture>> cells = new ArrayList<>(List.of(set(rows.head())));
        rows.rows().forEach(row -> cells.add(set(row)));
        double[] widths = new double[rows.head().size()];
        for (List<Picture> row : cells) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).width());
            }
        }
        double wide = 0;
        for (double width : widths) {
            wide += width + APART;
        }
        for (int i = 0; i < cells.size(); i++) {
            place(cells.get(i), widths, i * ROW);
            double y = (i + 1) * ROW - ROW / 8;
            things.add(new Drawn.Line("ruled", new Box(0, y, wide, y + THIN)));
        }
        return new Picture(things, wide, cells.size() * ROW);
    }

    private List<Picture> set(List<Phrase> row) {
        return row.stream()
                .map(cell -> PageText.small().set(cell, ENDLESS, reader))
                .toList();
    }

    private void place(List<Picture> row, double[] widths, double y) {
        double x = 0;
        for (int i = 0; i < widths.length; i++) {
            double inside = i == 0 ? 0 : (widths[i] - row.get(i).width()) / 2;
            things.addAll(row.get(i).placed(1, x + inside, y));
            x += widths[i] + APART;
        }
    }
}
