package monochord.shell.answer;

import java.util.List;
import java.util.function.BiConsumer;

/**
 * Writes one JSON object on one line (RFC 8259), field by field in the order given.
 *
 * <p>Written here rather than taken from a library because it is on the way to the first answer, where each class loaded
 * is felt, and because nothing of ours reads JSON.
 */
public final class Json {
    private final StringBuilder out = new StringBuilder("{");
    private boolean first = true;

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

    /** @param number as JSON writes numbers; null if it is empty */
    public Json number(String name, String number) {
        name(name);
        out.append(number.isEmpty() ? "null" : number);
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

    /** A list of objects. */
    public <T> Json objects(String name, List<T> values, BiConsumer<Json, T> fields) {
        return list(name, values, (json, value) -> {
            Json object = new Json();
            fields.accept(object, value);
            json.out.append(object);
        });
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
        for (int i = 0; i < text.length(); i++) {
            character(text.charAt(i));
        }
        out.append('"');
    }

    private void character(char c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\t' -> out.append("\\t");
            default -> {
                if (c < 0x20 || c >= 0x7F && mayHarm(c)) {
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
