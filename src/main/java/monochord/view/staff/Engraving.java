package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;

/**
 * Music laid out on paper of a given width: lines are filled as far as they go, broken at bar lines where there are any,
 * and all but a short last one are stretched to the same width.
 *
 * @param width of the paper, in staff spaces
 * @param height of the paper, in staff spaces
 */
public record Engraving(List<Drawn> drawn, double width, double height) {
    /** So wide are lines on a page if nothing else is said: 168 mm with 1.75 mm a space. */
    public static final double PAGE = 96;

    private static final double MARGIN = 0.5;
    private static final double BETWEEN_LINES = 2.5;
    /** A last line that is filled so far is stretched like the others. */
    private static final double NEARLY_FULL = 0.8;

    public Engraving {
        drawn = List.copyOf(drawn);
    }

    /** @param most how wide the paper may be; a single bar that is wider makes it so */
    public static Engraving of(StaffMusic music, double most) {
        List<List<SetColumn>> lines = lines(music, most - 2 * MARGIN);
        double filled = lines.stream()
                .mapToDouble(line -> new StaffSystem(music, line).width())
                .max()
                .orElseThrow();
        double width = lines.size() > 1 ? Math.max(filled, most - 2 * MARGIN) : filled;
        List<Drawn> drawn = new ArrayList<>();
        double y = MARGIN;
        for (List<SetColumn> line : lines) {
            StaffSystem system = new StaffSystem(music, line);
            boolean last = line == lines.get(lines.size() - 1);
            boolean stretched = lines.size() > 1 && (!last || system.width() > NEARLY_FULL * width);
            double top = y;
            system.drawn(stretched ? width - system.width() : 0, last)
                    .forEach(thing -> drawn.add(thing.moved(MARGIN, top)));
            y += system.height() + (last ? 0 : BETWEEN_LINES);
        }
        return new Engraving(drawn, width + 2 * MARGIN, y + MARGIN);
    }

    private static List<List<SetColumn>> lines(StaffMusic music, double most) {
        double free = most - StaffSystem.beforeMusic(music);
        List<List<SetColumn>> lines = new ArrayList<>();
        List<SetColumn> line = new ArrayList<>();
        double filled = 0;
        for (List<SetColumn> bar : bars(music)) {
            double wide = bar.stream().mapToDouble(SetColumn::width).sum();
            if (!line.isEmpty() && filled + wide > free) {
                lines.add(line);
                line = new ArrayList<>();
                filled = 0;
            }
            line.addAll(bar);
            filled += wide;
        }
        lines.add(line);
        return lines;
    }

    /** What may not be torn apart: a bar, or where there are no bar lines a column. */
    private static List<List<SetColumn>> bars(StaffMusic music) {
        boolean barred = music.columns().stream().anyMatch(StaffColumn::endsBar);
        List<List<SetColumn>> bars = new ArrayList<>();
        List<SetColumn> bar = new ArrayList<>();
        for (SetColumn column : SetColumn.of(music)) {
            bar.add(column);
            if (!barred || column.column().endsBar()) {
                bars.add(bar);
                bar = new ArrayList<>();
            }
        }
        if (!bar.isEmpty()) {
            bars.add(bar);
        }
        return bars;
    }
}
