package monochord.song.abc;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A file of tunes, cut into tunes: each begins with {@code X:} and ends with an empty line.
 *
 * <p>Source: the ABC standard 2.1, section 2.2.
 *
 * @param header fields before the first tune, which hold for all
 */
public record AbcBook(List<BookLine> header, List<Tune> tunes) {
    private static final int MOST_TUNES = 20_000;
    private static final int MOST_LINES_OF_A_TUNE = 4000;
    private static final int LONGEST_LINE = 20_000;
    private static final Pattern TITLE = Pattern.compile("\\s*T:(.*)");
    private static final Pattern START = Pattern.compile("X:\\s*(\\S*).*");
    private static final Pattern FIELD = Pattern.compile("(?:[A-Za-z]:|%%).*");

    /** @param number from 1 */
    record BookLine(int number, String text) {}

    /**
     * One tune, not read yet.
     *
     * @param number as it is written behind {@code X:}
     */
    public record Tune(String number, String title, List<BookLine> lines) {}

    public static AbcBook of(String text) {
        List<BookLine> header = new ArrayList<>();
        List<Tune> tunes = new ArrayList<>();
        List<BookLine> current = null;
        int number = 0;
        for (String raw : (Iterable<String>)
                text.replace("\r\n", "\n").replace('\r', '\n').lines()::iterator) {
            number++;
            String line = raw.length() > LONGEST_LINE ? raw.substring(0, LONGEST_LINE) : raw;
            if (START.matcher(line).matches()) {
                close(current, tunes);
                current = new ArrayList<>();
            } else if (line.isBlank()) {
                close(current, tunes);
                current = null;
            }
            if (current != null && current.size() < MOST_LINES_OF_A_TUNE) {
                current.add(new BookLine(number, line));
            } else if (tunes.isEmpty() && FIELD.matcher(line).matches()) {
                header.add(new BookLine(number, line));
            }
        }
        close(current, tunes);
        return new AbcBook(header, tunes);
    }

    private static void close(List<BookLine> lines, List<Tune> tunes) {
        if (lines != null && tunes.size() < MOST_TUNES) {
            var start = START.matcher(lines.get(0).text());
            String title = lines.stream()
                    .map(line -> TITLE.matcher(line.text()))
                    .filter(java.util.regex.Matcher::matches)
                    .map(found -> found.group(1).strip())
                    .findFirst()
                    .orElse("");
            tunes.add(new Tune(start.matches() ? start.group(1) : "", title, List.copyOf(lines)));
        }
    }

    /** The tune of that number behind {@code X:}, else the first whose title begins so, else one that holds it. */
    public Optional<Tune> find(String asked) {
        String wanted = asked.strip().toLowerCase(Locale.ROOT);
        return tunes.stream()
                .filter(tune -> tune.number().equals(wanted))
                .findFirst()
                .or(() -> tunes.stream()
                        .filter(tune -> tune.title().toLowerCase(Locale.ROOT).startsWith(wanted))
                        .findFirst())
                .or(() -> tunes.stream()
                        .filter(tune -> tune.title().toLowerCase(Locale.ROOT).contains(wanted))
                        .findFirst());
    }

    /** One tune by itself, with what holds for all. */
    public String text(Tune tune) {
        return Stream.of(header, List.of(new BookLine(0, "")), tune.lines())
                .flatMap(List::stream)
                .map(line -> line.text() + "\n")
                .collect(Collectors.joining());
    }
}
