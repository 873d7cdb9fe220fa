package monochord.view.drawn;

import java.util.ArrayList;
import java.util.List;

/** Things that lie on a paper of a certain size, from its upper left corner on. */
public record Picture(List<Drawn> things, double width, double height) {
    public Picture {
        things = List.copyOf(things);
    }

    /** The same picture, made larger or smaller. */
    public Picture scaled(double scale) {
        return new Picture(placed(scale, 0, 0), width * scale, height * scale);
    }

    /** Not wider than this: made smaller if it is. */
    public Picture within(double most) {
        return width > most ? scaled(most / width) : this;
    }

    /** What it holds, somewhere on a larger paper. */
    public List<Drawn> placed(double scale, double right, double down) {
        return things.stream().map(thing -> thing.placed(scale, right, down)).toList();
    }

    /** This and another below it. */
    public Picture above(Picture other, double gap) {
        double down = height + gap;
        List<Drawn> both = new ArrayList<>(things);
        both.addAll(other.placed(1, 0, down));
        return new Picture(both, Math.max(width, other.width), down + other.height);
    }

    /** This and another to its right, their middles at one height. */
    public Picture beside(Picture other, double gap) {
        double tall = Math.max(height, other.height);
        List<Drawn> both = new ArrayList<>(placed(1, 0, (tall - height) / 2));
        both.addAll(other.placed(1, width + gap, (tall - other.height) / 2));
        return new Picture(both, width + gap + other.width, tall);
    }
}
