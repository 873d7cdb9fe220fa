package monochord.shell.answer;

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
    private final StringBuilder out;
    private boolean first = true;

    public Json() {
        this(new StringBuilder());
    }

    private Json(StringBuilder out) {
        this.out = out.append('{');
    }

    public Json put(String name, String value) {
        name(name);
        quote(value);
        return this;
    }

    public Json put(String name, long value) {
        name(name);
        out.append(value);
        return this;
    }

    /** A whole number without a point, any other with up to four digits behind it. */
    public Json put(String name, double value) {
        long tenThousandths = Math.round(value * 10_000);
        name(name);
        out.append(BigDecimal.valueOf(tenThousandths, 4).stripTrailingZeros().toPlainString());
        return this;
    }

    public Json put(String name, boolean value) {
        name(name);
        out.append(value);
        return this;
    }

    /** A list of strings: what each value prints. */
    public Json put(String name, List<?> values) {
        return list(name, values, (json, value) -> json.quote(value.toString()));
    }

    public Json numbers(String name, List<Integer> values) {
        return list(name, values, (json, value) -> json.out.append(value));
    }

    /** A list of objects. */
    public <T> Json objects(String name, List<T> values, BiConsumer<Json, T> fields) {
        return list(name, values, (json, value) -> {
            fields.accept(new Json(json.out), value);
            json.out.append('}');
        });
    }

    /** An object within. */
    public Json object(String name, Consumer<Json> fields) {
        name(name);
        fields.accept(new Json(out));
        out.append('}');
        return this;
    }

    private <T> Json list(String name, List<T> values, BiConsumer<Json, T> write) {
        name(name);
        out.append('[');
        for (int i = 0; i < values.size(); i++) {
            if (i > 0) {
                out.append(',');
            }
            write.accept(this, values.get(i));
        }
        out.append(']');
        return this;
    }

    private void name(String name) {
        if (!first) {
            out.append(',');
        }
        first = false;
        quote(name);
        out.append(':');
    }

    private void quote(String text) {
        if (text == null) {
            out.append("null");
            return;
        }
        out.append('"');
        if (isEscaped(text)) {
            for (int i = 0; i < text.length(); i++) {
                character(text.charAt(i));
            }
        } else {
            out.append(text);
        }
        out.append('"');
    }

    private static boolean isEscaped(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (isEscaped(text.charAt(i))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isEscaped(char c) {
        return c < 0x20 || c == '"' || c == '\\' || c >= 0x7F && mayHarm(c);
    }

    private void character(char c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\t' -> out.append("\\t");
            default -> {
                if (isEscaped(c)) {
                    escape(c);
                } else {
                    out.append(c);
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
        out.append("\\u");
        for (int shift = 12; shift >= 0; shift -= 4) {
            out.append(Character.forDigit(c >> shift & 0xF, 16));
        }
    }

    /** The whole object. */
    @Override
    public String toString() {
        return out + "}";
    }
}
