package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.song.WrittenBar.Behind;
import monochord.song.WrittenBar.Place;

/**
 * Bars as text: {@code |: C | F G :| [1 C | [2 C ||}.
 *
 * <p>{@code |} is a bar line, {@code ||} and {@code |]} a double one, {@code |:} and {@code :|} stand around what is
 * repeated, more colons for more times; {@code [1} begins a first ending. The end of a line ends a bar.
 */
public final class BarLines {
    /** More bars than this stand in no song; those behind are not read. */
    static final int MOST = 5000;

    private static final Pattern SIGN =
            Pattern.compile("(:*)(?:\\|\\]|\\[\\||\\|+)(:*)|::|\\[(\\d{1,2}(?:[,-]\\d{1,2}){0,8})");

    private final List<WrittenBar> bars = new ArrayList<>();
    private boolean opens;
    private String ending = "";

    private BarLines() {}

    /** @param first the number of the first line in its file */
    public static List<WrittenBar> read(List<String> lines, int first) {
        BarLines reading = new BarLines();
        for (int i = 0; i < lines.size() && reading.bars.size() < MOST; i++) {
            reading.line(lines.get(i), first + i);
        }
        return List.copyOf(reading.bars);
    }

    private void line(String line, int number) {
        Matcher sign = SIGN.matcher(line);
        int from = 0;
        int before = bars.size();
        while (sign.find()) {
            bar(line, from, sign.start(), number);
            sign(sign);
            from = sign.end();
        }
        bar(line, from, line.length(), number);
        if (bars.size() > before) {
            last(last().before(Behind.LINE_END));
        }
    }

    private void bar(String line, int from, int to, int number) {
        String text = line.substring(from, to);
        if (!text.isBlank() && bars.size() < MOST) {
            int column = from + text.length() - text.stripLeading().length() + 1;
            bars.add(new WrittenBar(text.strip(), new Place(number, column), opens, 0, ending, Behind.BAR_LINE));
            opens = false;
            ending = "";
        }
    }

    private void sign(Matcher sign) {
        if (sign.group(3) != null) {
            ending = sign.group(3);
            return;
        }
        boolean both = sign.group().equals("::");
        int closing = both ? 1 : sign.group(1).length();
        if (closing > 0 && !bars.isEmpty()) {
            last(last().repeated(closing + 1));
        }
        opens |= both || !sign.group(2).isEmpty();
        if (!both && sign.group().matches(".*(\\|\\||\\|\\]|\\[\\|).*") && !bars.isEmpty()) {
            last(last().before(Behind.DOUBLE_BAR));
        }
    }

    private WrittenBar last() {
        return bars.get(bars.size() - 1);
    }

    private void last(WrittenBar changed) {
        bars.set(bars.size() - 1, changed);
    }

    /** The lines that {@link #read} reads as these bars. */
    public static List<String> write(List<WrittenBar> bars) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < bars.size(); i++) {
            WrittenBar bar = bars.get(i);
            line.append(bar.opens() ? "|: " : "")
                    .append(bar.ending().isEmpty() ? "" : "[" + bar.ending() + " ")
                    .append(bar.text())
                    .append(behind(bar, i + 1 == bars.size()));
            if (bar.endsLine() || i + 1 == bars.size()) {
                lines.add(line.toString().stripTrailing());
                line.setLength(0);
            }
        }
        return lines;
    }

    private static String behind(WrittenBar bar, boolean isLast) {
        return bar.times() > 1
                ? " " + ":".repeat(bar.times() - 1) + "| "
                : bar.endsPart() ? " || " : isLast ? "" : " | ";
    }
}
