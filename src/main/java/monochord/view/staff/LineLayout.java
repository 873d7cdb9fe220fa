package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;

/** Where the columns and bars of one line stand. */
record LineLayout(List<PlacedColumn> columns, List<BarStart> starts) {
    /**
     * A bar in its line.
     *
     * @param x where it begins, its changes included
     * @param lineRight the right edge of the line behind it
     */
    record BarStart(SetBar bar, boolean beginsLine, double x, double lineRight) {}

    /** @param stretch how much wider it is made, shared among the columns as they are wide */
    static LineLayout of(List<SetBar> bars, double from, double stretch) {
        double total = bars.stream().mapToDouble(SetBar::columnsWidth).sum();
        double factor = total > 0 ? 1 + stretch / total : 1;
        List<PlacedColumn> columns = new ArrayList<>();
        List<BarStart> starts = new ArrayList<>();
        double x = from;
        for (int i = 0; i < bars.size(); i++) {
            SetBar bar = bars.get(i);
            double begin = x;
            x += bar.before(i == 0);
            for (int column = 0; column < bar.columns().size(); column++) {
                SetColumn set = bar.columns().get(column);
                columns.add(new PlacedColumn(set, x + set.left(), i));
                x += bar.widths().get(column) * factor;
            }
            x += bar.lineRoom();
            starts.add(new BarStart(bar, i == 0, begin, x));
            x += bar.behindLine();
        }
        return new LineLayout(columns, starts);
    }
}
