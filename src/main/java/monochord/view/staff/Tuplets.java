package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.MusicSign;

/** The figures over or under tuplets of one voice, with a bracket where no single beam joins the notes. */
final class Tuplets {
    private static final double APART = 0.5;
    private static final double FIGURE = 1.5;
    private static final double THIN = 0.16;
    private static final double HOOK = 0.7;

    private final List<Beam.BeamedNote> notes;
    private final List<Drawn> there;

    /** @param there what stands on the staff so far, which is kept off */
    Tuplets(List<Beam.BeamedNote> notes, List<Drawn> there) {
        this.notes = notes;
        this.there = List.copyOf(there);
    }

    List<Drawn> drawn() {
        List<Drawn> drawn = new ArrayList<>();
        List<Beam.BeamedNote> group = new ArrayList<>();
        Beats filled = Beats.ZERO;
        for (Beam.BeamedNote note : notes) {
            NoteLength length = note.chord().set().event().length();
            if (!length.isInTuplet()) {
                group.clear();
                filled = Beats.ZERO;
                continue;
            }
            group.add(note);
            filled = filled.plus(length.beats());
            if (Long.bitCount(filled.denominator()) == 1) {
                draw(group, length.in(), drawn);
                group.clear();
                filled = Beats.ZERO;
            }
        }
        return drawn;
    }

    private void draw(List<Beam.BeamedNote> group, int figure, List<Drawn> drawn) {
        boolean up = group.get(0).chord().set().stemUp();
        double left = group.get(0).x() + group.get(0).chord().heads().left();
        Beam.BeamedNote last = group.get(group.size() - 1);
        double right = last.x() + last.chord().heads().right();
        double y = up ? edge(left, right, true) - APART : edge(left, right, false) + APART + FIGURE;
        MusicSign sign = MusicSign.named("tuplet" + figure);
        double middle = (left + right) / 2;
        drawn.add(new Drawn.Sign(
                "tuplet",
                Phrase.of("{0} in the time of fewer", figure),
                sign,
                middle - sign.box().width() / 2 - sign.box().left(),
                y));
        boolean beamed =
                group.stream().allMatch(note -> note.chord().set().beam().isPresent())
                        && group.stream()
                                        .map(note -> note.chord().set().beam())
                                        .distinct()
                                        .count()
                                == 1;
        if (!beamed) {
            bracket(new Box(left, y - FIGURE / 2, right, y - FIGURE / 2 + (up ? HOOK : -HOOK)), sign, drawn);
        }
    }

    /** The highest or lowest of what stands between two places, and of the staff. */
    private double edge(double left, double right, boolean top) {
        double edge = top ? 0 : Clef.LINES - 1;
        for (Drawn thing : there) {
            Box box = StaffLine.box(thing);
            if (box != null && box.left() < right && box.right() > left) {
                edge = top ? Math.min(edge, box.top()) : Math.max(edge, box.bottom());
            }
        }
        return edge;
    }

    /** A line with a gap for the figure, and a hook at each end. */
    private static void bracket(Box box, MusicSign sign, List<Drawn> drawn) {
        double gap = sign.box().width() / 2 + 0.4;
        double middle = (box.left() + box.right()) / 2;
        double y = box.top();
        double top = Math.min(y, box.bottom());
        double bottom = Math.max(y, box.bottom());
        drawn.add(new Drawn.Line("bracket", new Box(box.left(), y - THIN / 2, middle - gap, y + THIN / 2)));
        drawn.add(new Drawn.Line("bracket", new Box(middle + gap, y - THIN / 2, box.right(), y + THIN / 2)));
        drawn.add(new Drawn.Line("bracket", new Box(box.left(), top, box.left() + THIN, bottom)));
        drawn.add(new Drawn.Line("bracket", new Box(box.right() - THIN, top, box.right(), bottom)));
    }
}
