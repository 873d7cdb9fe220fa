package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import monochord.text.Phrase;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Typeface;

/**
 * What stands over and under a line of music, in rows: names of sections, endings and chord symbols above; what is sung and
 * numerals below.
 */
final class WordRows {
    private static final double CLEAR = 1;
    private static final double ROW = 2.3;
    private static final double ENDING = 1.6;
    private static final double THIN = 0.16;
    private static final double NUMBER = 1.5;
    private static final double NUMBER_CLEAR = 0.4;
    private static final String HYPHEN = "-";

    private final LineLayout layout;
    private final double right;
    private final boolean symbols;
    private final boolean endings;
    private final boolean names;
    private final boolean numerals;
    private final int verses;

    WordRows(LineLayout layout, double right) {
        this.layout = layout;
        this.right = right;
        this.symbols = has(column -> !column.above().isEmpty());
        this.numerals = has(column -> !column.below().isEmpty());
        this.names = layout.starts().stream()
                .anyMatch(start -> !start.bar().bar().over().isEmpty());
        this.endings = layout.starts().stream()
                .anyMatch(start -> !start.bar().bar().ending().isEmpty());
        this.verses = layout.columns().stream()
                .flatMap(placed -> placed.column().column().events().stream())
                .mapToInt(event -> event.sung().size())
                .max()
                .orElse(0);
    }

    private boolean has(Predicate<StaffColumn> wanted) {
        return layout.columns().stream().map(placed -> placed.column().column()).anyMatch(wanted);
    }

    double heightAbove() {
        double words = (symbols ? CLEAR + SetColumn.WORDS : 0) + (endings ? CLEAR + ROW : 0) + (names ? ROW + 0.4 : 0);
        return Math.max(words, number() > 0 ? NUMBER + 2 * NUMBER_CLEAR : 0);
    }

    double heightBelow() {
        return (verses > 0 ? CLEAR + verses * ROW : 0) + (numerals ? CLEAR + SetColumn.WORDS : 0);
    }

    /** The number of the bar with which the line begins, where it helps to find the place: not of the first bar. */
    private int number() {
        int number = layout.starts().get(0).bar().bar().number();
        return number > 1 ? number : 0;
    }

    private void number(double highest, List<Drawn> drawn) {
        if (number() > 0) {
            Phrase number = Phrase.of("{0}", number());
            drawn.add(new Drawn.Words("bar-number", number, 0, highest - NUMBER_CLEAR, NUMBER, Typeface.REGULAR));
        }
    }

    /** @param highest thing of the music */
    List<Drawn> above(double highest) {
        List<Drawn> drawn = new ArrayList<>();
        number(highest, drawn);
        double y = highest - CLEAR;
        for (PlacedColumn placed : layout.columns()) {
            Phrase symbol = placed.column().column().above();
            if (!symbol.isEmpty()) {
                drawn.add(new Drawn.Words("symbol", symbol, placed.x(), y, SetColumn.WORDS, Typeface.REGULAR));
            }
        }
        y -= symbols ? SetColumn.WORDS : -CLEAR;
        if (endings) {
            y -= CLEAR;
            endings(y, drawn);
            y -= ROW;
        }
        for (LineLayout.BarStart start : layout.starts()) {
            Phrase name = start.bar().bar().over();
            if (!name.isEmpty()) {
                drawn.add(new Drawn.Words("section", name, start.x(), y - 0.4, SetColumn.WORDS, Typeface.BOLD));
            }
        }
        return drawn;
    }

    /** Each from its first bar to the line that ends it, the next ending or the end of the line. */
    private void endings(double y, List<Drawn> drawn) {
        List<LineLayout.BarStart> starts = layout.starts();
        for (int i = 0; i < starts.size(); i++) {
            String numbers = starts.get(i).bar().bar().ending();
            if (numbers.isEmpty()) {
                continue;
            }
            int end = i;
            while (end + 1 < starts.size()
                    && starts.get(end).bar().bar().end() == StaffBar.BarLine.SINGLE
                    && starts.get(end + 1).bar().bar().ending().isEmpty()) {
                end++;
            }
            double left = starts.get(i).x() + 0.2;
            double to = Math.min(right, starts.get(end).lineRight() - 0.2);
            drawn.add(new Drawn.Line("ending", new Box(left, y - ENDING, to, y - ENDING + THIN)));
            drawn.add(new Drawn.Line("ending", new Box(left, y - ENDING, left + THIN, y)));
            if (starts.get(end).bar().bar().end() == StaffBar.BarLine.REPEAT) {
                drawn.add(new Drawn.Line("ending", new Box(to - THIN, y - ENDING, to, y)));
            }
            drawn.add(new Drawn.Words(
                    "ending", Phrase.typed(numbers + "."), left + 0.5, y, SetColumn.SUNG, Typeface.REGULAR));
        }
    }

    /** @param lowest thing of the music */
    List<Drawn> below(double lowest) {
        List<Drawn> drawn = new ArrayList<>();
        for (int verse = 0; verse < verses; verse++) {
            sung(verse, lowest + CLEAR + SetColumn.SUNG + verse * ROW, drawn);
        }
        double y = lowest + heightBelow();
        for (PlacedColumn placed : layout.columns()) {
            Phrase numeral = placed.column().column().below();
            if (!numeral.isEmpty()) {
                drawn.add(
                        new Drawn.Words("numeral", numeral, placed.x(), y - CLEAR, SetColumn.WORDS, Typeface.REGULAR));
            }
        }
        return drawn;
    }

    /** What is sung to a note of this line, and where it lies. */
    private record SungText(String text, double x, double right) {
        boolean goesOn() {
            return text.endsWith(HYPHEN);
        }

        String bare() {
            return goesOn() ? text.substring(0, text.length() - HYPHEN.length()) : text;
        }
    }

    /** A hyphen stands in the middle between two syllables of a word; at the end of a line behind the first. */
    private void sung(int verse, double y, List<Drawn> drawn) {
        List<SungText> syllables = syllables(verse);
        for (int i = 0; i < syllables.size(); i++) {
            SungText one = syllables.get(i);
            words(one.bare(), one.x(), y, drawn);
            if (one.goesOn()) {
                double hyphen = wide(HYPHEN);
                double to = i + 1 < syllables.size() ? syllables.get(i + 1).x() : one.right() + hyphen;
                words(HYPHEN, (one.right() + to - hyphen) / 2, y, drawn);
            }
        }
    }

    private List<SungText> syllables(int verse) {
        List<SungText> syllables = new ArrayList<>();
        for (PlacedColumn placed : layout.columns()) {
            for (StaffEvent event : placed.column().column().events()) {
                if (event.sung().size() > verse && !event.sung().get(verse).isEmpty()) {
                    String text = event.sung().get(verse).toString();
                    double x = SetColumn.middle(placed.x()) - wide(text) / 2;
                    double right = x + wide(text) - (text.endsWith(HYPHEN) ? wide(HYPHEN) : 0);
                    syllables.add(new SungText(text, x, right));
                }
            }
        }
        return syllables;
    }

    private static double wide(String text) {
        return Typeface.REGULAR.width(text) * SetColumn.SUNG;
    }

    private static void words(String text, double x, double y, List<Drawn> drawn) {
        drawn.add(new Drawn.Words("sung", Phrase.typed(text), x, y, SetColumn.SUNG, Typeface.REGULAR));
    }
}
