package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Reader;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Picture;

/**
 * Music laid out on paper of a given width, in staff spaces: lines are filled as far as they go, broken where the music says
 * and else at bar lines where there are any, and all but a short last one are stretched to the same width.
 */
public final class Engraving {
    /** So wide are lines on a page if nothing else is said: 168 mm with 1.75 mm a space. */
    public static final double PAGE = 96;

    private static final double MARGIN = 0.5;
    private static final double BETWEEN_LINES = 2.5;
    /** A last line that is filled so far is stretched like the others. */
    private static final double NEARLY_FULL = 0.7;

    private final StaffMusic music;
    private final double free;
    private final boolean filled;

    private Engraving(StaffMusic music, double most, boolean filled) {
        this.music = music;
        this.free = most - 2 * MARGIN;
        this.filled = filled;
    }

    /** @param most how wide the paper may be; a single bar that is wider makes it so */
    public static Picture of(StaffMusic music, double most, Reader reader) {
        return new Engraving(music, most, false).picture(reader);
    }

    /** The same with every line as wide as the paper. */
    public static Picture filled(StaffMusic music, double most, Reader reader) {
        return new Engraving(music, most, true).picture(reader);
    }

    /** The lines one by one, for pages. */
    public static List<Picture> lines(StaffMusic music, double most, Reader reader) {
        return new Engraving(music, most, false).lines(reader);
    }

    private List<Picture> lines(Reader reader) {
        List<StaffSystem> systems = systems(SetBar.of(music, reader));
        double widest = systems.stream().mapToDouble(StaffSystem::width).max().orElseThrow();
        double width = filled || systems.size() > 1 ? Math.max(widest, free) : widest;
        List<Picture> lines = new ArrayList<>();
        for (int i = 0; i < systems.size(); i++) {
            StaffSystem system = systems.get(i);
            boolean last = i + 1 == systems.size();
            boolean stretched = filled || systems.size() > 1 && (!last || system.width() > NEARLY_FULL * width);
            Picture line = system.picture(stretched ? width - system.width() : 0);
            lines.add(new Picture(line.things(), width, line.height()));
        }
        return lines;
    }

    private Picture picture(Reader reader) {
        List<Picture> lines = lines(reader);
        List<Drawn> drawn = new ArrayList<>();
        double y = MARGIN;
        for (Picture line : lines) {
            drawn.addAll(line.placed(1, MARGIN, y));
            y += line.height() + BETWEEN_LINES;
        }
        return new Picture(drawn, lines.get(0).width() + 2 * MARGIN, y - BETWEEN_LINES + MARGIN);
    }

    private List<StaffSystem> systems(List<SetBar> bars) {
        List<StaffSystem> systems = new ArrayList<>();
        List<SetBar> line = new ArrayList<>();
        double width = 0;
        for (SetBar bar : bars) {
            StaffSystem.SystemShape kind = kind(systems.isEmpty(), false);
            if (line.isEmpty()) {
                width = StaffSystem.beforeMusic(bar.state(), kind) + bar.width(true);
            } else if (width + bar.width(false) - bar.behindLine() > free) {
                systems.add(new StaffSystem(line, kind));
                line = new ArrayList<>();
                width = StaffSystem.beforeMusic(bar.state(), kind(false, false)) + bar.width(true);
            } else {
                width += bar.width(false);
            }
            line.add(bar);
            if (bar.bar().endsLine() && bar != bars.get(bars.size() - 1)) {
                systems.add(new StaffSystem(line, kind(systems.isEmpty(), false)));
                line = new ArrayList<>();
            }
        }
        systems.add(new StaffSystem(line, kind(systems.isEmpty(), true)));
        return systems;
    }

    private StaffSystem.SystemShape kind(boolean first, boolean last) {
        return new StaffSystem.SystemShape(
                music.clefs().size(), first && music.metre().isPresent(), last, music.isBarred());
    }
}
