package monochord.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;

/** Lines of styled text. */
public record StyledText(List<StyledLine> lines) {
    public static final StyledText EMPTY = new StyledText(List.of());

    public StyledText {
        lines = List.copyOf(lines);
    }

    /** Plain text, split at its line breaks. */
    public static StyledText of(String text) {
        return of(text, Style.PLAIN);
    }

    /** Text in one style, split at its line breaks. */
    public static StyledText of(String text, Style style) {
        return builder().add(text, style).build();
    }

    public static StyledText of(StyledLine... lines) {
        return new StyledText(List.of(lines));
    }

    /** For English readers only, or for text without sentences. */
    public static Builder builder() {
        return new Builder(Reader.ENGLISH);
    }

    /** @param reader who the phrases are put into words for */
    public static Builder builder(Reader reader) {
        return new Builder(reader);
    }

    /** One phrase, put into words. */
    public static StyledText of(Phrase phrase, Reader reader) {
        return of(phrase.in(reader));
    }

    /** This text and, on the line after it, the other. */
    public StyledText plus(StyledText below) {
        List<StyledLine> both = new ArrayList<>(lines);
        both.addAll(below.lines);
        return new StyledText(both);
    }

    public boolean isEmpty() {
        return lines.isEmpty();
    }

    /** Columns of the widest line. */
    public int columns() {
        return lines.stream().mapToInt(StyledLine::columns).max().orElse(0);
    }

    /** The text alone, the lines parted by line feeds, none behind the last. */
    public String plain() {
        return lines.stream().map(StyledLine::plain).collect(Collectors.joining("\n"));
    }

    /**
     * English sentences in these note names, and in pure ASCII where the signs ask for it. What has been written with such
     * signs already must not come here again; lay a picture out with its signs instead.
     */
    public StyledText in(Signs signs) {
        StyledText named = signs.naming() == NoteNaming.ENGLISH ? this : mapped(line -> line.named(signs));
        return signs.isAscii() ? named.mapped(StyledLine::toAscii) : named;
    }

    private StyledText mapped(UnaryOperator<StyledLine> change) {
        return new StyledText(lines.stream().map(change).toList());
    }

    /** No line wider than {@code width} columns; see {@link Wrap}. */
    public StyledText wrapped(int width) {
        return Wrap.text(this, width);
    }

    /** Gathers spans into lines. */
    public static final class Builder {
        private final List<StyledLine> lines = new ArrayList<>();
        private final Reader reader;
        private StyledLine open;

        private Builder(Reader reader) {
            this.reader = reader;
        }

        /** Goes on in the open line with a phrase in words. */
        public Builder add(Phrase phrase) {
            return add(phrase.in(reader));
        }

        public Builder add(Phrase phrase, Style style) {
            return add(phrase.styled(style));
        }

        /** A whole line of one phrase. */
        public Builder line(Phrase phrase) {
            return line(phrase.in(reader));
        }

        public Builder line(Phrase phrase, Style style) {
            return line(phrase.styled(style));
        }

        /** Goes on in the open line; a line break in the text ends it. */
        public Builder add(String text) {
            return add(text, Style.PLAIN);
        }

        public Builder add(String text, Style style) {
            String[] parts = text.split("\\R", -1);
            add(StyledLine.of(parts[0], style));
            for (int i = 1; i < parts.length; i++) {
                end().add(StyledLine.of(parts[i], style));
            }
            return this;
        }

        public Builder add(StyledLine line) {
            open = open == null ? line : open.plus(line);
            return this;
        }

        /** Ends the open line, or leaves a line empty where none is open. */
        public Builder end() {
            lines.add(open == null ? StyledLine.EMPTY : open);
            open = null;
            return this;
        }

        /** A whole line. */
        public Builder line(String text) {
            return line(text, Style.PLAIN);
        }

        public Builder line(String text, Style style) {
            return endOpen().add(text, style).end();
        }

        public Builder line(StyledLine line) {
            return endOpen().add(line).end();
        }

        /** An empty line. */
        public Builder gap() {
            return endOpen().end();
        }

        /** Whole lines. */
        public Builder lines(StyledText text) {
            endOpen();
            lines.addAll(text.lines());
            return this;
        }

        private Builder endOpen() {
            return open == null ? this : end();
        }

        public StyledText build() {
            endOpen();
            return new StyledText(lines);
        }
    }
}
