package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import monochord.text.Phrase;

/** One line of music: one staff or two that are joined, from the clef to the last bar line. */
final class StaffSystem {
    static final double STAFF_LINE = 0.13;
    private static final double BAR_LINE = 0.16;
    private static final double FINAL_BAR = 0.5;
    private static final double STAFF = Clef.LINES - 1;
    private static final double BRACE = 1;
    private static final double BRACE_BEFORE_LINE = 0.15;
    private static final double CLEF = 0.6;
    private static final double BEHIND_CLEF = 0.8;
    private static final double BEHIND_SIGNATURE = 1.1;
    private static final double SIGN_APART = 0.1;
    private static final double END = 1.4;
    /** Between the staves of two hands, from the top line of one to that of the other, if nothing asks for more. */
    private static final double STAVES_APART = 10;

    private static final double CLEAR = 1;
    private static final double BAR_BEFORE_NEXT = 0.8;

    private final StaffMusic music;
    private final List<SetColumn> columns;
    private final List<Drawn> drawn = new ArrayList<>();

    StaffSystem(StaffMusic music, List<SetColumn> columns) {
        this.music = music;
        this.columns = columns;
    }

    /** Clef and signature with the room around them. */
    static double beforeMusic(StaffMusic music) {
        return start(music) + CLEF + clefWidth(music) + BEHIND_CLEF + signatureWidth(music) + BEHIND_SIGNATURE;
    }

    private static double start(StaffMusic music) {
        return music.grand() ? BRACE : 0;
    }

    private static double clefWidth(StaffMusic music) {
        double treble = Clef.TREBLE.drawn().box().right();
        return music.grand() ? Math.max(treble, Clef.BASS.drawn().box().right()) : treble;
    }

    private static double signatureWidth(StaffMusic music) {
        int count = music.signature();
        return count == 0
                ? 0
                : Math.abs(count)
                        * (MusicSign.accidental(Integer.signum(count)).box().right() + SIGN_APART);
    }

    double width() {
        return beforeMusic(music)
                + columns.stream().mapToDouble(SetColumn::width).sum()
                + END;
    }

    double height() {
        return topLine() + lowest() + (hasWords(SetColumn::below) ? CLEAR + Drawn.Words.SIZE : 0) + STAFF_LINE;
    }

    private boolean hasWords(Function<SetColumn, Phrase> words) {
        return columns.stream().anyMatch(column -> !words.apply(column).isEmpty());
    }

    /** How far below the top of the paper the first staff begins. */
    private double topLine() {
        return (hasWords(SetColumn::above) ? CLEAR + Drawn.Words.SIZE : 0) - highest(Clef.TREBLE);
    }

    /** The highest that is drawn on a staff, from its top line; 0 or less. */
    private double highest(Clef clef) {
        return chords(clef).stream()
                .mapToDouble(chord -> chord.box().top())
                .reduce(opening(clef).top(), Math::min);
    }

    /** Around the staff, its clef and its signature. */
    private Box opening(Clef clef) {
        MusicSign sign = MusicSign.accidental(Integer.signum(music.signature()));
        Box staff = new Box(0, -STAFF_LINE, 0, STAFF + STAFF_LINE)
                .around(clef.drawn().box());
        return clef.signature(music.signature()).stream()
                .map(height -> sign.box().moved(0, clef.y(height)))
                .reduce(staff, Box::around);
    }

    private double lowest(Clef clef) {
        return chords(clef).stream()
                .mapToDouble(chord -> chord.box().bottom())
                .reduce(opening(clef).bottom(), Math::max);
    }

    private List<ChordOnStaff> chords(Clef clef) {
        return columns.stream()
                .map(column -> clef == Clef.TREBLE ? column.upper() : column.lower())
                .flatMap(Optional::stream)
                .toList();
    }

    /** From the top line of the first staff to that of the second. */
    private double apart() {
        return Math.max(STAVES_APART, lowest(Clef.TREBLE) + CLEAR - highest(Clef.BASS));
    }

    private double lowest() {
        return music.grand() ? apart() + lowest(Clef.BASS) : lowest(Clef.TREBLE);
    }

    /**
     * All of it, from x 0 and y 0 on.
     *
     * @param stretch how much wider it is made, shared among the columns
     * @param last whether the music ends here
     */
    List<Drawn> drawn(double stretch, boolean last) {
        drawn.clear();
        double top = topLine();
        double right = width() + stretch;
        staff(Clef.TREBLE, top, right);
        if (music.grand()) {
            staff(Clef.BASS, top + apart(), right);
            joined(top);
        }
        columns(top, stretch);
        end(top, right, last);
        return List.copyOf(drawn);
    }

    private void staff(Clef clef, double top, double right) {
        double left = start(music);
        for (int line = 0; line < Clef.LINES; line++) {
            level("staff-line", left, right, top + line, STAFF_LINE);
        }
        drawn.add(clef.drawn().moved(left + CLEF, top));
        double x = left + CLEF + clefWidth(music) + BEHIND_CLEF;
        MusicSign sign = MusicSign.accidental(Integer.signum(music.signature()));
        Phrase words = music.signature() > 0
                ? Phrase.of("sharp of the key signature")
                : Phrase.of("flat of the key signature");
        for (int height : clef.signature(music.signature())) {
            drawn.add(new Drawn.Sign("signature", words, sign, x, top + clef.y(height)));
            x += sign.box().right() + SIGN_APART;
        }
    }

    private void joined(double top) {
        double tall = apart() + STAFF;
        MusicSign sign = MusicSign.named("brace");
        Drawn.Sign brace = new Drawn.Sign(
                "brace",
                Phrase.of("two staves for two hands"),
                sign,
                0,
                top + tall,
                tall / -sign.box().top());
        drawn.add(brace.moved(BRACE - BRACE_BEFORE_LINE - sign.box().right() * brace.wide(), 0));
        upright("bar-line", start(music), top, tall, BAR_LINE);
    }

    private void columns(double top, double stretch) {
        double x = beforeMusic(music);
        double each = stretch / columns.size();
        for (int i = 0; i < columns.size(); i++) {
            SetColumn column = columns.get(i);
            column(column, x + column.left(), top);
            x += column.width() + each;
            if (column.column().endsBar() && i + 1 < columns.size()) {
                upright("bar-line", x - BAR_BEFORE_NEXT, top, tall(), BAR_LINE);
            }
        }
    }

    private void column(SetColumn column, double x, double top) {
        column.upper().ifPresent(chord -> chord.drawn().forEach(thing -> drawn.add(thing.moved(x, top))));
        column.lower().ifPresent(chord -> chord.drawn().forEach(thing -> drawn.add(thing.moved(x, top + apart()))));
        if (!column.above().isEmpty()) {
            drawn.add(new Drawn.Words("symbol", column.above(), x, top + highest(Clef.TREBLE) - CLEAR));
        }
        if (!column.below().isEmpty()) {
            drawn.add(new Drawn.Words("numeral", column.below(), x, top + lowest() + Drawn.Words.SIZE));
        }
    }

    private void end(double top, double right, boolean last) {
        boolean barred = music.columns().stream().anyMatch(StaffColumn::endsBar);
        if (last && barred) {
            upright("bar-line", right - FINAL_BAR - 2 * BAR_LINE - BAR_LINE, top, tall(), BAR_LINE);
            upright("bar-line", right - FINAL_BAR, top, tall(), FINAL_BAR);
        } else if (barred || last) {
            upright("bar-line", right - BAR_LINE, top, tall(), BAR_LINE);
        }
    }

    private double tall() {
        return music.grand() ? apart() + STAFF : STAFF;
    }

    private void level(String meaning, double from, double to, double y, double thick) {
        drawn.add(new Drawn.Line(meaning, new Box(from, y - thick / 2, to, y + thick / 2)));
    }

    private void upright(String meaning, double x, double top, double tall, double thick) {
        drawn.add(new Drawn.Line(meaning, new Box(x, top - STAFF_LINE / 2, x + thick, top + tall + STAFF_LINE / 2)));
    }
}
