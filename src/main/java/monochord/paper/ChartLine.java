package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.paper.page.PageFlow;
import monochord.paper.page.PageText;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.BandNumber;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Picture;
import monochord.view.drawn.Typeface;

/**
 * One line of bars, in millimetres. A bar that was changed has a thick frame, its number, its degree, and in small what stood
 * there before: it is the first thing that is seen.
 */
final class ChartLine {
    private static final int LEAST_BARS = 4;
    private static final double SYMBOL = 5.8;
    private static final double SMALL = 3;
    private static final double ABOVE = 4.6;
    private static final double TALL = 11;
    private static final double BELOW = 4.2;
    private static final double THIN = 0.3;
    private static final double THICK = 1;
    private static final double INDENT = 1.8;
    private static final double FEET = 7.7;
    private static final double DOT = 0.9;

    private final List<ChartBar> bars;
    private final PlayerPart part;
    private final ChartSheet.ChartLook look;
    private final Reader reader;
    private final double across;
    private final double wide;
    private final double top;
    private final List<Drawn> drawn = new ArrayList<>();

    ChartLine(List<ChartBar> bars, PlayerPart part, ChartSheet.ChartLook look, PageFlow flow) {
        this.bars = bars;
        this.part = part;
        this.look = look;
        this.reader = flow.reader();
        this.across = flow.size().across();
        this.wide = across / Math.max(LEAST_BARS, bars.size());
        boolean above = bars.stream()
                .anyMatch(bar -> !bar.cue().isEmpty()
                        || !bar.signs().ending().isEmpty()
                        || bar.signs().times() > 2);
        this.top = above ? ABOVE : 0;
    }

    /** @param last whether the song ends with it */
    Picture drawn(boolean last) {
        line(0, THIN);
        for (int i = 0; i < bars.size(); i++) {
            bar(bars.get(i), i * wide);
            right(bars.get(i), (i + 1) * wide, last && i + 1 == bars.size());
        }
        boolean below = look.numerals() || look.numbers() || bars.stream().anyMatch(bar -> bar.change() > 0);
        return new Picture(drawn, across, top + TALL + (below ? BELOW : 0));
    }

    private void line(double x, double thick) {
        drawn.add(new Drawn.Line("bar-line", new Box(x, top, x + thick, top + TALL)));
    }

    private void right(ChartBar bar, double x, boolean last) {
        if (bar.signs().times() > 0) {
            line(x - THICK, THICK);
            line(x - THICK - 1.1, THIN);
            dots(x - THICK - 2.3);
        } else if (last) {
            line(x - THICK, THICK);
            line(x - THICK - 1, THIN);
        } else {
            line(x - THIN, THIN);
            if (bar.signs().endsPart()) {
                line(x - THIN - 1, THIN);
            }
        }
    }

    private void dots(double x) {
        for (double y : List.of(top + TALL * 0.36, top + TALL * 0.64)) {
            drawn.add(new Drawn.Line("repeat-dot", new Box(x - DOT / 2, y - DOT / 2, x + DOT / 2, y + DOT / 2)));
        }
    }

    private void bar(ChartBar bar, double left) {
        double from = left + INDENT;
        if (bar.signs().opens()) {
            line(left, THICK);
            line(left + THICK + 0.8, THIN);
            dots(left + THICK + 2.2);
            from += 2.6;
        }
        above(bar, left);
        if (bar.change() > 0) {
            frame(left);
        }
        if (bar.signs().same() && bar.change() == 0) {
            words("same", Phrase.typed("%"), left + wide / 2 - 2, top + FEET, new PageText(Typeface.REGULAR, SYMBOL));
            return;
        }
        chords(bar, from, left + wide - 1);
        if (bar.change() > 0) {
            before(bar, left);
        }
    }

    private void above(ChartBar bar, double left) {
        String ending = bar.signs().ending();
        double x = left + 0.6;
        if (!ending.isEmpty()) {
            drawn.add(new Drawn.Line("ending", new Box(left, top - 3.6, left + wide - 1, top - 3.6 + THIN)));
            drawn.add(new Drawn.Line("ending", new Box(left, top - 3.6, left + THIN, top - 0.4)));
            words("ending", Phrase.typed(ending + "."), x + 0.6, top - 0.7, new PageText(Typeface.REGULAR, SMALL));
            x += 6;
        }
        if (!bar.cue().isEmpty()) {
            words("cue", Phrase.typed(bar.cue()), x, top - 0.9, new PageText(Typeface.REGULAR, SMALL));
        }
        if (bar.signs().times() > 2) {
            Phrase times = Phrase.of("{0} times", bar.signs().times());
            double w = Typeface.REGULAR.width(times.in(reader).plain()) * SMALL;
            words("times", times, left + wide - w - 0.5, top - 0.9, new PageText(Typeface.REGULAR, SMALL));
        }
    }

    private void frame(double left) {
        double right = left + wide;
        double bottom = top + TALL;
        for (Box side : List.of(
                new Box(left, top, right, top + THICK),
                new Box(left, bottom - THICK, right, bottom),
                new Box(left, top, left + THICK, bottom),
                new Box(right - THICK, top, right, bottom))) {
            drawn.add(new Drawn.Line("changed", side));
        }
    }

    /** Each chord at its share of the bar, all smaller where they would run into each other. */
    private void chords(ChartBar bar, double from, double to) {
        double size = SYMBOL;
        double room = to - from;
        int before = 0;
        for (ChartBar.ChartChord chord : bar.chords()) {
            double share = room * chord.shares() / bar.shares() - 1;
            double need = Typeface.BOLD.width(symbol(chord).in(reader).plain());
            size = need > 0 ? Math.min(size, share / need) : size;
        }
        for (ChartBar.ChartChord chord : bar.chords()) {
            double x = from + room * before / bar.shares();
            words("symbol", symbol(chord), x, top + FEET, new PageText(Typeface.BOLD, size));
            if (chord.hit()) {
                words("hit", Phrase.of("hit"), x, top + 2.9, new PageText(Typeface.REGULAR, SMALL * 0.8));
            }
            second(chord, x);
            before += chord.shares();
        }
    }

    private static Phrase symbol(ChartBar.ChartChord chord) {
        if (chord.held()) {
            return Phrase.typed("–");
        }
        return chord.chord().map(one -> Phrase.of("{0}", one)).orElse(Phrase.typed("N.C."));
    }

    /** The numeral or the number under a chord, if it is wanted. */
    private void second(ChartBar.ChartChord chord, double x) {
        if (chord.held() || chord.numeral().isEmpty()) {
            return;
        }
        Optional<Phrase> under = look.numerals()
                ? Optional.of(Phrase.of("{0}", chord.numeral().get()))
                : look.numbers()
                        ? chord.chord().map(one -> Phrase.of("{0}", BandNumber.of(one, part.key())))
                        : Optional.empty();
        under.ifPresent(phrase -> words("numeral", phrase, x, top + TALL + 3.2, new PageText(Typeface.REGULAR, SMALL)));
    }

    /** Its number in the corner, and below what stood there before. */
    private void before(ChartBar bar, double left) {
        words(
                "number",
                Phrase.of("{0}", bar.change()),
                left + wide - THICK - 2.4,
                top + THICK + 2.6,
                new PageText(Typeface.BOLD, SMALL));
        part.chart().changes().stream()
                .filter(change -> change.number() == bar.change())
                .findFirst()
                .ifPresent(change -> {
                    Phrase was = Phrase.of("{0}, was {1}", change.degrees(), change.from());
                    boolean second = look.numerals() || look.numbers();
                    double x = second ? left + wide / 2 : left + INDENT;
                    words("before", was, x, top + TALL + 3.2, new PageText(Typeface.REGULAR, SMALL));
                });
    }

    private void words(String kind, Phrase phrase, double x, double y, PageText set) {
        drawn.add(new Drawn.Words(kind, phrase, x, y, set.size(), set.face()));
    }
}
