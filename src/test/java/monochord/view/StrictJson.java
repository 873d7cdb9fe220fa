package monochord.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads one JSON text and takes nothing that RFC 8259 does not. Objects become maps, lists lists, numbers longs
 * or, with a point, doubles.
 */
public final class StrictJson {
    private static final String SHORT = "\"\\/bfnrt";
    private static final String MEANT = "\"\\/\b\f\n\r\t";

    private final String text;
    private int place;

    private StrictJson(String text) {
        this.text = text;
    }

    public static Object read(String text) {
        StrictJson reader = new StrictJson(text);
        Object value = reader.value();
        if (reader.place != text.length()) {
            throw reader.wrong("the end");
        }
        return value;
    }

    @SuppressWarnings("unchecked") // a JSON object has strings for names
    public static Map<String, Object> object(String text) {
        return (Map<String, Object>) read(text);
    }

    private Object value() {
        return switch (peek()) {
            case '{' -> object();
            case '[' -> list();
            case '"' -> string();
            case 't' -> word("true", true);
            case 'f' -> word("false", false);
            case 'n' -> word("null", null);
            default -> number();
        };
    }

    private Map<String, Object> object() {
        Map<String, Object> fields = new LinkedHashMap<>();
        take('{');
        while (peek() != '}') {
            if (!fields.isEmpty()) {
                take(',');
            }
            String name = string();
            take(':');
            if (fields.containsKey(name)) {
                throw wrong("another name than " + name);
            }
            fields.put(name, value());
        }
        take('}');
        return fields;
    }

    private List<Object> list() {
        List<Object> values = new ArrayList<>();
        take('[');
        while (peek() != ']') {
            if (!values.isEmpty()) {
                take(',');
            }
            values.add(value());
        }
        take(']');
        return values;
    }

    private String string() {
        StringBuilder read = new StringBuilder();
        take('"');
        while (peek() != '"') {
            char c = text.charAt(place++);
            if (c < 0x20 || Character.isSurrogate(c)) {
                throw wrong("an escape");
            }
            read.append(c == '\\' ? escaped() : c);
        }
        take('"');
        return read.toString();
    }

    private char escaped() {
        char c = text.charAt(place++);
        if (c == 'u') {
            place += 4;
            return (char) Integer.parseInt(text, place - 4, place, 16);
        }
        if (SHORT.indexOf(c) < 0) {
            throw wrong("one of " + SHORT);
        }
        return MEANT.charAt(SHORT.indexOf(c));
    }

    private Object word(String word, Object meant) {
        for (char c : word.toCharArray()) {
            take(c);
        }
        return meant;
    }

    private Number number() {
        int start = place;
        while (place < text.length() && "-.0123456789".indexOf(text.charAt(place)) >= 0) {
            place++;
        }
        String digits = text.substring(start, place);
        if (!digits.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?")) {
            throw wrong("a value");
        }
        return digits.indexOf('.') < 0 ? (Number) Long.valueOf(digits) : Double.valueOf(digits);
    }

    private char peek() {
        return place < text.length() ? text.charAt(place) : '\0';
    }

    private void take(char c) {
        if (peek() != c) {
            throw wrong("'" + c + "'");
        }
        place++;
    }

    private AssertionError wrong(String expected) {
        return new AssertionError("expected " + expected + " at " + place + " of " + text);
    }
}
