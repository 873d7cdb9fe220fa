package monochord.song.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.note.Unreadable;

/**
 * One line of a plain text: chords, a heading, a field of the head, words, or nothing.
 *
 * <p>A line is chords if each of its words is a chord, a bar sign, a hold, a repeat or {@code N.C.}; a lone {@code A} in a
 * line of words stays a word. Ours, for no standard says it.
 *
 * @param text with tabs widened to eight columns
 */
record TextLine(String text, LineKind kind) {
    enum LineKind {
        BLANK,
        CHORDS,
        HEADING,
        FIELD,
        WORDS
    }

    /** A chord, or the sign that stands for one, at its column from 0. */
    record PlacedSymbol(String text, int column) {
        boolean isBarLine() {
            return text.matches(":*\\|[|:\\]]*|\\[\\d");
        }
    }

    private static final int TAB = 8;
    private static final Pattern WORD = Pattern.compile(":*\\|[|:\\]]*|\\[\\d|[^\\s|:\\[]+|\\S");
    private static final Pattern TIMES = Pattern.compile("\\(?[x×](\\d)\\)?|\\(?(\\d)[x×]\\)?");
    private static final Pattern SIGN = Pattern.compile(":*\\|[|:\\]]*|\\[\\d|%|\\.|N\\.?C\\.?|r|-|–|/");
    private static final String NAMES =
            "verse|chorus|bridge|intro|introduction|outro|pre-?chorus|refrain|interlude|solo|"
                    + "instrumental|ending|coda|tag|middle(?: eight)?|hook|break|vamp|turnaround";
    private static final Pattern HEADING = Pattern.compile("(?i)\\[([\\p{L}\\d][^\\]|]{0,40})\\]:?(.*)|((?:" + NAMES
            + ")(?:\\s+(?:\\d{1,2}|[A-Z]))?)\\s*:?(\\s*\\(?[x×]\\d\\)?)?\\s*:?");
    private static final Pattern FIELD =
            Pattern.compile("(?i)(title|by|key|metre|meter|time|tempo|swing)\\s*:\\s*(\\S.*)");

    static TextLine of(String raw) {
        String text = widened(raw);
        if (text.isBlank()) {
            return new TextLine(text, LineKind.BLANK);
        } else if (FIELD.matcher(text.strip()).matches()) {
            return new TextLine(text, LineKind.FIELD);
        } else if (isChords(text)) {
            return new TextLine(text, LineKind.CHORDS);
        }
        return new TextLine(text, HEADING.matcher(text.strip()).matches() ? LineKind.HEADING : LineKind.WORDS);
    }

    private static String widened(String raw) {
        StringBuilder text = new StringBuilder();
        raw.codePoints().forEach(c -> {
            if (c == '\t') {
                text.append(" ".repeat(TAB - text.length() % TAB));
            } else {
                text.appendCodePoint(c);
                if (Character.isIdeographic(c)) {
                    text.append('\u2060'); // two columns wide
                }
            }
        });
        return text.toString().stripTrailing();
    }

    private static boolean isChords(String text) {
        boolean any = false;
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            String one = word.group();
            boolean isSign = SIGN.matcher(one).matches() || TIMES.matcher(one).matches();
            if (!isSign && chord(one).isEmpty()) {
                return false;
            }
            any |= !isSign || one.equals("%");
        }
        return any;
    }

    private static Optional<Chord> chord(String word) {
        try {
            return word.length() > 20 || word.charAt(0) < 'A' || word.charAt(0) > 'G'
                    ? Optional.empty()
                    : Optional.of(Chord.parse(word));
        } catch (Unreadable none) {
            return Optional.empty();
        }
    }

    /** In order; how often the line is played is not among them. */
    List<PlacedSymbol> symbols() {
        List<PlacedSymbol> symbols = new ArrayList<>();
        Matcher word = WORD.matcher(text);
        boolean barred = text.indexOf('|') >= 0;
        while (word.find()) {
            String one = word.group();
            boolean isBeat = one.equals("/");
            if (isBeat && barred) {
                symbols.add(new PlacedSymbol(".", word.start()));
            } else if (!isBeat && !TIMES.matcher(one).matches() && !one.matches("[-–]")) {
                symbols.add(new PlacedSymbol(one.matches("N\\.?C\\.?") ? "r" : one, word.start()));
            }
        }
        return symbols;
    }

    /** How often it is played, 1 where it does not say. */
    int times() {
        Matcher times = Pattern.compile("(?:^|\\s)(?:" + TIMES.pattern() + ")\\s*:?\\s*$")
                .matcher(text);
        return times.find()
                ? Math.max(1, Integer.parseInt(times.group(1) != null ? times.group(1) : times.group(2)))
                : 1;
    }

    /** The name of a section, without brackets, colon and count. */
    String heading() {
        Matcher heading = HEADING.matcher(text.strip());
        String name = heading.matches() ? heading.group(1) != null ? heading.group(1) : heading.group(3) : text;
        String small = name.strip();
        return small.equals(small.toUpperCase(java.util.Locale.ROOT))
                ? small.charAt(0) + small.substring(1).toLowerCase(java.util.Locale.ROOT)
                : small;
    }

    /** The name of a field in small letters, and what it is. */
    String[] field() {
        Matcher field = FIELD.matcher(text.strip());
        return field.matches()
                ? new String[] {
                    field.group(1).toLowerCase(java.util.Locale.ROOT),
                    field.group(2).strip()
                }
                : new String[] {"", ""};
    }
}
