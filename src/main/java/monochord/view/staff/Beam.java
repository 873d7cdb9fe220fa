package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;

/**
 * Notes that a beam joins, with their stems. Common practice of engraving, no source: it leans as the notes at its ends do, by
 * half of their distance and one space at most, and lies level where a note between them reaches beyond both.
 */
final class Beam {
    private static final double THICK = 0.5;
    private static final double APART = 0.25;
    private static final double SHORTEST_STEM = 2.7;
    private static final double STEEPEST = 1;
    private static final double STUB = 1.1;

    private final List<BeamedNote> notes;
    private final boolean up;

    /** A note under it, at its place in the line. */
    record BeamedNote(ChordOnStaff chord, double x) {
        double stemX() {
            return x + chord.stemX();
        }

        double middle() {
            return stemX() + ChordOnStaff.STEM / 2;
        }

        int flags() {
            return chord.set().event().length().value().flags();
        }
    }

    Beam(List<BeamedNote> notes) {
        this.notes = notes;
        this.up = notes.get(0).chord.set().stemUp();
    }

    /** Stems and beams. */
    List<Drawn> drawn() {
        double slope = slope();
        double start = start(slope);
        List<Drawn> drawn = new ArrayList<>();
        for (BeamedNote note : notes) {
            double end = y(start, slope, note.middle());
            Box stem = note.chord.stem(end);
            drawn.add(new Drawn.Line("stem", stem.moved(note.x, 0)));
        }
        int most = notes.stream().mapToInt(BeamedNote::flags).max().orElse(1);
        for (int level = 0; level < most; level++) {
            level(level, start + level * (THICK + APART) * (up ? 1 : -1), slope, drawn);
        }
        return drawn;
    }

    private double slope() {
        BeamedNote first = notes.get(0);
        BeamedNote last = notes.get(notes.size() - 1);
        double one = first.chord.nearest();
        double other = last.chord.nearest();
        for (BeamedNote note : notes.subList(1, notes.size() - 1)) {
            double y = note.chord.nearest();
            if (up ? y <= Math.min(one, other) : y >= Math.max(one, other)) {
                return 0;
            }
        }
        double rise = Math.max(-STEEPEST, Math.min(STEEPEST, (other - one) / 2));
        return rise / (last.middle() - first.middle());
    }

    /** The height of its outer edge over the first stem: every stem is as long as it must be, and reaches the middle line. */
    private double start(double slope) {
        double start = up ? Double.MAX_VALUE : -Double.MAX_VALUE;
        for (BeamedNote note : notes) {
            double least =
                    Math.max(ChordOnStaff.STEM_LENGTH - 0.3, SHORTEST_STEM + (note.flags() - 1) * (THICK + APART));
            double end = up ? note.chord.nearest() - least : note.chord.nearest() + least;
            double reaching = up ? Math.min(end, ChordOnStaff.MIDDLE_LINE) : Math.max(end, ChordOnStaff.MIDDLE_LINE);
            double here = reaching - slope * (note.middle() - notes.get(0).middle());
            start = up ? Math.min(start, here) : Math.max(start, here);
        }
        return start;
    }

    private double y(double start, double slope, double x) {
        return start + slope * (x - notes.get(0).middle());
    }

    private void level(int level, double start, double slope, List<Drawn> drawn) {
        int from = -1;
        for (int i = 0; i <= notes.size(); i++) {
            boolean has = i < notes.size() && notes.get(i).flags() > level;
            if (has && from < 0) {
                from = i;
            } else if (!has && from >= 0) {
                span(from, i - 1, start, slope, drawn);
                from = -1;
            }
        }
    }

    /** From stem to stem, or a stub at a single one, towards its neighbour. */
    private void span(int from, int to, double start, double slope, List<Drawn> drawn) {
        double left = notes.get(from).stemX();
        double right = notes.get(to).stemX() + ChordOnStaff.STEM;
        if (from == to) {
            left = from == 0 ? left : right - STUB;
            right = from == 0 ? left + STUB : right;
        }
        double in = up ? THICK : -THICK;
        double one = y(start, slope, left);
        double other = y(start, slope, right);
        drawn.add(new Drawn.Area(
                "beam",
                Phrase.of("beam"),
                List.of(
                        Drawn.Stroke.to(left, one),
                        Drawn.Stroke.to(right, other),
                        Drawn.Stroke.to(right, other + in),
                        Drawn.Stroke.to(left, one + in)),
                Drawn.Ink.BLACK,
                0));
    }
}
