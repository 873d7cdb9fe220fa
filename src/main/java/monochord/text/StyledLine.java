package monochord.text;

import java.util.ArrayList;
import java.util.List;
import monochord.text.naming.InProse;
import monochord.text.naming.Renaming;
import monochord.theory.note.Signs;

/** One line of spans. Neighbours of one style are joined and empty spans left out, so lines that look alike are equal. */
public record StyledLine(List<Span> spans) {
    public static final StyledLine EMPTY = new StyledLine(List.of());

    public StyledLine {
        spans = joined(spans);
    }

    public static StyledLine of(String text) {
        return of(text, Style.PLAIN);
    }

    public static StyledLine of(String text, Style style) {
        return new StyledLine(List.of(new Span(text, style)));
    }

    private static List<Span> joined(List<Span> spans) {
        return isJoined(spans) ? List.copyOf(spans) : join(spans);
    }

    private static boolean isJoined(List<Span> spans) {
        Style before = null;
        for (Span span : spans) {
            if (span.text().isEmpty() || span.style() == before) {
                return false;
            }
            before = span.style();
        }
        return true;
    }

    private static List<Span> join(List<Span> spans) {
        List<Span> joined = new ArrayList<>(spans.size());
        StringBuilder text = new StringBuilder();
        Style style = Style.PLAIN;
        for (Span span : spans) {
            if (span.text().isEmpty()) {
                continue;
            }
            if (span.style() != style) {
                close(joined, text, style);
                style = span.style();
            }
            text.append(span.text());
        }
        close(joined, text, style);
        return List.copyOf(joined);
    }

    private static void close(List<Span> joined, StringBuilder text, Style style) {
        if (!text.isEmpty()) {
            joined.add(new Span(text.toString(), style));
            text.setLength(0);
        }
    }

    public StyledLine plus(String text) {
        return plus(text, Style.PLAIN);
    }

    public StyledLine plus(String text, Style style) {
        return plus(of(text, style));
    }

    public StyledLine plus(StyledLine other) {
        List<Span> both = new ArrayList<>(spans);
        both.addAll(other.spans);
        return new StyledLine(both);
    }

    /** Columns of a terminal. */
    public int columns() {
        int columns = 0;
        for (Span span : spans) {
            columns += span.columns();
        }
        return columns;
    }

    public boolean isBlank() {
        for (Span span : spans) {
            if (!span.text().isBlank()) {
                return false;
            }
        }
        return true;
    }

    /** The text alone. */
    public String plain() {
        if (spans.size() == 1) {
            return spans.get(0).text();
        }
        StringBuilder text = new StringBuilder();
        spans.forEach(span -> text.append(span.text()));
        return text.toString();
    }

    /** The line without spaces at its end. */
    public StyledLine stripTrailing() {
        int last = spans.size() - 1;
        if (last < 0 || !spans.get(last).text().endsWith(" ")) {
            return this;
        }
        List<Span> kept = new ArrayList<>(spans.subList(0, last));
        kept.add(spans.get(last).withText(spans.get(last).text().stripTrailing()));
        return new StyledLine(kept).stripTrailing();
    }

    /** The English names in this line by those of another country; columns that two spaces part stay in place. */
    StyledLine named(Signs signs) {
        List<Renaming> changes = InProse.changes(plain(), signs);
        if (changes.isEmpty()) {
            return this;
        }
        changes = Renaming.inColumns(changes, plain());
        List<Span> named = new ArrayList<>();
        int from = 0;
        for (Span span : spans) {
            boolean stays = span.style() == Style.JAVA;
            named.add(stays ? span : span.withText(Renaming.within(changes, span.text(), from)));
            from += span.text().length();
        }
        return new StyledLine(named);
    }

    StyledLine toAscii() {
        return new StyledLine(
                spans.stream().map(span -> span.withText(Ascii.of(span.text()))).toList());
    }
}
