package monochord.view;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Writes one JSON object on one line (RFC 8259), field by field in the order given.
 *
 * <p>Written here rather than taken from a library because it is on the way to the first answer, where each class loaded
 * is felt, and because nothing of ours reads JSON.
 */
public final class Json {
    private final Utf8 out;
    private boolean first = true;

    public Json() {
        this(new Utf8());
    }

    private Json(Utf8 out) {
        this.out = out;
        out.ascii('{');
    }

    public Json put(String name, String value) {
        name(name);
        quote(value);
        return this;
    }

    public Json put(String name, long value) {
        name(name);
        out.ascii(String.valueOf(value));
        return this;
    }

    /** A whole number without a point, any other with up to four digits behind it. */
    public Json put(String name, double value) {
        long tenThousandths = Math.round(value * 10_000);
        name(name);
        out.ascii(BigDecimal.valueOf(tenThousandths, 4).stripTrailingZeros().toPlainString());
        return this;
    }

    public Json put(String name, boolean value) {
        name(name);
        out.ascii(String.valueOf(value));
        return this;
    }

    /** A list of strings: what each value prints. */
    public Json put(String name, List<?> values) {
        open(name);
        for (int i = 0; i < values.size(); i++) {
            comma(i);
            quote(values.get(i).toString());
        }
        return close();
    }

    public Json numbers(String name, List<Integer> values) {
        open(name);
        for (int i = 0; i < values.size(); i++) {
            comma(i);
            out.ascii(values.get(i).toString());
        }
        return close();
    }

    /** A list of objects. */
    public <T> Json objects(String name, List<T> values, BiConsumer<Json, T> fields) {
        open(name);
        for (int i = 0; i < values.size(); i++) {
            comma(i);
            fields.accept(new Json(out), values.get(i));
            out.ascii('}');
        }
        return close();
    }

    /** An object within. */
    public Json object(String name, Consumer<Json> fields) {
        name(name);
        fields.accept(new Json(out));
        out.ascii('}');
        return this;
    }

    private void open(String name) {
        name(name);
        out.ascii('[');
    }

    private Json close() {
        out.ascii(']');
        return this;
    }

    private void comma(int place) {
        if (place > 0) {
            out.ascii(',');
        }
    }

    private void name(String name) {
        if (!first) {
            out.ascii(',');
        }
        first = false;
        quote(name);
        out.ascii(':');
    }

    private void quote(String text) {
        if (text == null) {
            out.ascii("null");
            return;
        }
        out.ascii('"');
        for (int i = out.plain(text); i < text.length(); i++) {
            character(text.charAt(i));
        }
        out.ascii('"');
    }

    private static boolean isEscaped(char c) {
        return c < 0x20 || c >= 0x7F && mayHarm(c);
    }

    private void character(char c) {
        switch (c) {
            case '"' -> out.ascii("\\\"");
            case '\\' -> out.ascii("\\\\");
            case '\n' -> out.ascii("\\n");
            case '\t' -> out.ascii("\\t");
            default -> {
                if (isEscaped(c)) {
                    escape(c);
                } else {
                    out.character(c);
                }
            }
        }
    }

    /** What could steer a terminal, break a line or turn text round; and surrogates, for half a pair is no UTF-8. */
    private static boolean mayHarm(char c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }

    private void escape(char c) {
        out.ascii("\\u");
        for (int shift = 12; shift >= 0; shift -= 4) {
            out.ascii(Character.forDigit(c >> shift & 0xF, 16));
        }
    }

    /** Writes the whole object as a line of its own. */
    public void writeTo(PrintStream lines) {
        out.writeTo(lines);
        lines.write('}');
        lines.write('\n');
    }

    /** The whole object. */
    @Override
    public String toString() {
        return out + "}";
    }
}
