package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.MusicSign;
import monochord.view.drawn.Picture;

/** One line of music: one staff or two that are joined, from the clef to the last bar line. */
final class StaffSystem {
    static final double STAFF_LINE = 0.13;
    static final double STAFF = Clef.LINES - 1;
    private static final double BRACE = 1;
    private static final double BRACE_BEFORE_LINE = 0.15;
    private static final double CLEF = 0.6;
    private static final double BEHIND_CLEF = 0.8;
    private static final double BEHIND_SIGNATURE = 1.1;
    private static final double METRE = 2.4;
    /** The room of a clef within a line. */
    private static final double WITHIN = 2.4;

    private static final double METRE_FIGURE = 2;
    private static final double BEFORE_SIGNS = 0.4;
    private static final double SIGN_APART = 0.1;
    private static final double END = 1.4;
    /** Between the staves of two hands, from the top line of one to that of the other, if nothing asks for more. */
    private static final double STAVES_APART = 10;

    private static final double CLEAR = 1;

    private final List<SetBar> bars;
    private final SystemShape kind;
    private final List<Drawn> drawn = new ArrayList<>();
    private double top;
    private double apart;
    private double right;

    /**
     * What a line is.
     *
     * @param staves one or two
     * @param metre whether the metre is written at its start
     * @param last whether the music ends with it
     * @param barred whether the music has bar lines at all
     */
    record SystemShape(int staves, boolean metre, boolean last, boolean barred) {}

    StaffSystem(List<SetBar> bars, SystemShape kind) {
        this.bars = bars;
        this.kind = kind;
    }

    /** Brace, clef, signature and metre with the room around them. */
    static double beforeMusic(StaffMusic.State state, SystemShape kind) {
        return start(kind)
                + CLEF
                + clefWidth(state)
                + BEHIND_CLEF
                + SetBar.signatureWidth(state.signature())
                + (kind.metre ? METRE : 0)
                + BEHIND_SIGNATURE;
    }

    private static double start(SystemShape kind) {
        return kind.staves > 1 ? BRACE : 0;
    }

    private static double clefWidth(StaffMusic.State state) {
        return state.clefs().stream()
                .mapToDouble(clef -> clef.drawn().box().right())
                .max()
                .orElse(0);
    }

    double width() {
        double width = beforeMusic(state(), kind);
        for (int i = 0; i < bars.size(); i++) {
            SetBar bar = bars.get(i);
            width += bar.width(i == 0) - (i + 1 == bars.size() ? bar.behindLine() : 0);
        }
        return width + (lastLine() == StaffBar.BarLine.NONE ? END : 0);
    }

    private StaffMusic.State state() {
        return bars.get(0).state();
    }

    private StaffBar.BarLine lastLine() {
        return bars.get(bars.size() - 1).bar().end();
    }

    /** All of it, stretched by so much. */
    Picture picture(double stretch) {
        right = width() + stretch;
        LineLayout layout = LineLayout.of(bars, beforeMusic(state(), kind), stretch);
        List<StaffLine> lines = new ArrayList<>();
        for (int staff = 0; staff < kind.staves; staff++) {
            lines.add(new StaffLine(staff, layout.columns(), right));
        }
        WordRows rows = new WordRows(layout, right);
        double highest = highest(lines, 0);
        top = rows.heightAbove() - highest;
        apart = kind.staves < 2 ? 0 : Math.max(STAVES_APART, lowest(lines, 0) + CLEAR - highest(lines, 1));
        double lowest = apart + lowest(lines, kind.staves - 1);
        for (int staff = 0; staff < kind.staves; staff++) {
            staff(staff);
            double y = y(staff);
            lines.get(staff).drawn().forEach(thing -> drawn.add(thing.moved(0, y)));
        }
        around(layout);
        drawn.addAll(rows.above(top + highest));
        drawn.addAll(rows.below(top + lowest));
        return new Picture(drawn, right, top + lowest + rows.heightBelow() + STAFF_LINE);
    }

    private double highest(List<StaffLine> lines, int staff) {
        return Math.min(lines.get(staff).highest(), opening(staff).top());
    }

    private double lowest(List<StaffLine> lines, int staff) {
        return Math.max(lines.get(staff).lowest(), opening(staff).bottom());
    }

    /** Brace, changes and bar lines. */
    private void around(LineLayout layout) {
        if (kind.staves > 1) {
            joined();
        }
        for (LineLayout.BarStart start : layout.starts()) {
            changes(start);
            line(start.bar().bar().end(), start.lineRight());
        }
        if (lastLine() == StaffBar.BarLine.NONE && (kind.barred || kind.last)) {
            upright("bar-line", right - SetBar.BAR_LINE, SetBar.BAR_LINE);
        }
    }

    private double y(int staff) {
        return top + staff * apart;
    }

    /** Around a staff, its clef and its signature. */
    private Box opening(int staff) {
        Clef clef = state().clefs().get(staff);
        int signs = state().signature();
        MusicSign sign = MusicSign.accidental(Integer.signum(signs));
        Box box = new Box(0, -STAFF_LINE, 0, STAFF + STAFF_LINE)
                .around(clef.drawn().box());
        return clef.signature(signs).stream()
                .map(height -> sign.box().moved(0, clef.y(height)))
                .reduce(box, Box::around);
    }

    private void staff(int staff) {
        double left = start(kind);
        for (int line = 0; line < Clef.LINES; line++) {
            level("staff-line", left, right, y(staff) + line, STAFF_LINE);
        }
        Clef clef = state().clefs().get(staff);
        drawn.add(clef.drawn().moved(left + CLEF, y(staff)));
        double x = left + CLEF + clefWidth(state()) + BEHIND_CLEF;
        signature(clef, state().signature(), x, y(staff));
        if (kind.metre) {
            metre(state().metre(), x + SetBar.signatureWidth(state().signature()) + BEFORE_SIGNS, y(staff));
        }
    }

    private void signature(Clef clef, int signs, double left, double y) {
        MusicSign sign = MusicSign.accidental(Integer.signum(signs));
        Phrase words = signs > 0 ? Phrase.of("sharp of the key signature") : Phrase.of("flat of the key signature");
        double x = left;
        for (int height : clef.signature(signs)) {
            drawn.add(new Drawn.Sign("signature", words, sign, x, y + clef.y(height)));
            x += sign.box().right() + SIGN_APART;
        }
    }

    private void metre(SongMetre metre, double x, double y) {
        figures(metre.beats(), x, y + 1);
        figures(metre.value(), x, y + 1 + METRE_FIGURE);
    }

    private void figures(int number, double left, double y) {
        String digits = Integer.toString(number);
        double wide = digits.chars()
                .mapToDouble(
                        digit -> MusicSign.named("timeSig" + (char) digit).box().right())
                .sum();
        double x = left + (METRE_FIGURE - wide) / 2;
        for (char digit : digits.toCharArray()) {
            MusicSign sign = MusicSign.named("timeSig" + digit);
            drawn.add(new Drawn.Sign("metre", Phrase.of("{0} of the metre", digit - '0'), sign, x, y));
            x += sign.box().right();
        }
    }

    private void joined() {
        double tall = apart + STAFF;
        MusicSign sign = MusicSign.named("brace");
        Drawn.Sign brace = new Drawn.Sign(
                "brace",
                Phrase.of("two staves for two hands"),
                sign,
                0,
                top + tall,
                1,
                tall / -sign.box().top());
        drawn.add(brace.moved(BRACE - BRACE_BEFORE_LINE - sign.box().right() * brace.wide(), 0));
        upright("bar-line", start(kind), SetBar.BAR_LINE);
    }

    /** What is written at the start of a bar; clef and key only where they do not begin the line anyway. */
    private void changes(LineLayout.BarStart start) {
        StaffBar.Before before = start.bar().bar().before();
        double x = start.x() + BEFORE_SIGNS;
        if (!start.beginsLine() && before.clef().isPresent()) {
            drawn.add(before.clef().get().drawnWithin().moved(x, y(0)));
            x += WITHIN;
        }
        if (!start.beginsLine() && before.signature().isPresent()) {
            int signs = before.signature().get();
            for (int staff = 0; staff < kind.staves; staff++) {
                signature(start.bar().state().clefs().get(staff), signs, x, y(staff));
            }
            x += SetBar.signatureRoom(signs);
        }
        if (before.metre().isPresent()) {
            for (int staff = 0; staff < kind.staves; staff++) {
                metre(before.metre().get(), x, y(staff));
            }
            x += METRE;
        }
        if (before.opens()) {
            opening(x - BEFORE_SIGNS);
        }
    }

    /** The line with which a repeat begins. */
    private void opening(double x) {
        upright("repeat", x, SetBar.THICK);
        upright("bar-line", x + SetBar.THICK + 0.3, SetBar.BAR_LINE);
        dots(x + SetBar.THICK + 0.8);
    }

    /** @param edge the right edge of all of it */
    private void line(StaffBar.BarLine line, double edge) {
        double thin = edge - SetBar.BAR_LINE;
        switch (line) {
            case NONE -> {}
            case SINGLE -> upright("bar-line", thin, SetBar.BAR_LINE);
            case DOUBLE -> {
                upright("bar-line", thin, SetBar.BAR_LINE);
                upright("bar-line", thin - SetBar.LINES_APART - SetBar.BAR_LINE, SetBar.BAR_LINE);
            }
            case FINAL, REPEAT -> {
                double inner = edge - SetBar.THICK - SetBar.LINES_APART - SetBar.BAR_LINE;
                upright("bar-line", edge - SetBar.THICK, SetBar.THICK);
                upright("bar-line", inner, SetBar.BAR_LINE);
                if (line == StaffBar.BarLine.REPEAT) {
                    dots(inner - 0.7);
                }
            }
        }
    }

    private void dots(double x) {
        MusicSign dot = MusicSign.named("augmentationDot");
        for (int staff = 0; staff < kind.staves; staff++) {
            drawn.add(new Drawn.Sign("repeat-dot", Phrase.of("repeat"), dot, x, y(staff) + 1.5));
            drawn.add(new Drawn.Sign("repeat-dot", Phrase.of("repeat"), dot, x, y(staff) + 2.5));
        }
    }

    private void level(String meaning, double from, double to, double y, double thick) {
        drawn.add(new Drawn.Line(meaning, new Box(from, y - thick / 2, to, y + thick / 2)));
    }

    private void upright(String meaning, double x, double thick) {
        double bottom = top + apart + STAFF + STAFF_LINE / 2;
        drawn.add(new Drawn.Line(meaning, new Box(x, top - STAFF_LINE / 2, x + thick, bottom)));
    }
}
