package monochord.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import monochord.page.naming.Change;
import monochord.page.naming.InProse;
import monochord.theory.Signs;

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
        List<Span> joined = new ArrayList<>(spans.size());
        for (Span span : spans) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).style() == span.style()) {
                joined.set(last, span.withText(joined.get(last).text() + span.text()));
            } else if (!span.text().isEmpty()) {
                joined.add(span);
            }
        }
        return List.copyOf(joined);
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
        return spans.stream().mapToInt(Span::columns).sum();
    }

    public boolean isBlank() {
        return spans.stream().allMatch(span -> span.text().isBlank());
    }

    /** The text alone. */
    public String plain() {
        return spans.stream().map(Span::text).collect(Collectors.joining());
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
        List<Change> changes = InProse.changes(plain(), signs);
        if (changes.isEmpty()) {
            return this;
        }
        changes = Change.inColumns(changes, plain());
        List<Span> named = new ArrayList<>();
        int from = 0;
        for (Span span : spans) {
            boolean stays = span.style() == Style.JAVA;
            named.add(stays ? span : span.withText(Change.within(changes, span.text(), from)));
            from += span.text().length();
        }
        return new StyledLine(named);
    }

    StyledLine toAscii() {
        return new StyledLine(
                spans.stream().map(span -> span.withText(Ascii.of(span.text()))).toList());
    }
}
