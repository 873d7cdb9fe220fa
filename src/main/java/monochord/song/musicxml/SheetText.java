package monochord.song.musicxml;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of an XML file by the encoding that it names or begins with. Bytes that are none in it become U+FFFD: the JDK's
 * reader would refuse the whole file, and write so to standard error itself.
 *
 * <p>Source: W3C XML 1.0, 4.3.3 and appendix F.
 */
final class SheetText {
    private static final Pattern NAMED =
            Pattern.compile("^<\\?xml[^>]{0,200}?encoding\\s*=\\s*[\"']([\\w.:-]{1,40})[\"']");
    private static final int DECLARATION = 300;
    private static final char MARK = '\uFEFF';

    private SheetText() {}

    static String of(byte[] bytes) {
        String text = new String(bytes, charset(bytes));
        return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
    }

    private static Charset charset(byte[] bytes) {
        if (begins(bytes, 0xFE, 0xFF) || begins(bytes, 0, '<')) {
            return StandardCharsets.UTF_16BE;
        }
        if (begins(bytes, 0xFF, 0xFE) || begins(bytes, '<', 0)) {
            return StandardCharsets.UTF_16LE;
        }
        String start = new String(bytes, 0, Math.min(bytes.length, DECLARATION), StandardCharsets.ISO_8859_1);
        Matcher named = NAMED.matcher(start);
        return named.find() ? named(named.group(1)) : StandardCharsets.UTF_8;
    }

    private static boolean begins(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    /** A name that is none, or that the first bytes belie, is taken for a slip. */
    private static Charset named(String name) {
        try {
            return name.toUpperCase(java.util.Locale.ROOT).startsWith("UTF-16")
                    ? StandardCharsets.UTF_8
                    : Charset.forName(name);
        } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
            return StandardCharsets.UTF_8;
        }
    }
}
