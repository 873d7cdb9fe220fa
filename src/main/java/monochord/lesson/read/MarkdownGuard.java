package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.text.Phrase;

/**
 * Goes over the text before the Markdown parser does, whose effort on unclosed tags, brackets and emphasis grows with the
 * square of a paragraph: takes out what is too long, and HTML, which the format does not have.
 */
public final class MarkdownGuard {
    private static final int LONGEST_LINE = 2000;
    private static final int LONGEST_STRETCH = 8000;
    /** Not behind a backslash, which makes it text. */
    private static final Pattern TAG = Pattern.compile("(?<!\\\\)((?:\\\\\\\\)*+)<(?=[A-Za-z/!?])");

    private static final Pattern FENCE = Pattern.compile(" {0,3}(`{3,}|~{3,})(.*)");

    private final Faults faults;
    private final boolean blocksToo;
    private String fence = "";
    private int stretch;

    MarkdownGuard(Faults faults) {
        this(faults, true);
    }

    /** @param blocksToo whether what stands in fenced blocks has to keep the bounds too */
    public MarkdownGuard(Faults faults, boolean blocksToo) {
        this.faults = faults;
        this.blocksToo = blocksToo;
    }

    /** The text as Markdown that is written as HTML nowhere. */
    public static String withoutHtml(String text) {
        return TAG.matcher(text).replaceAll("$1\\\\<");
    }

    public List<SourceLine> pass(List<SourceLine> lines) {
        List<SourceLine> passed = new ArrayList<>(lines.size());
        lines.forEach(line -> passed.add(new SourceLine(line.number(), pass(line))));
        return passed;
    }

    private String pass(SourceLine line) {
        boolean inside = !fence.isEmpty();
        if ((blocksToo || !inside) && isTooLong(line)) {
            return "";
        }
        return turnsFence(line.text()) || inside ? line.text() : withoutTags(line);
    }

    private boolean isTooLong(SourceLine line) {
        int length = line.text().length();
        stretch = line.isBlank() ? 0 : stretch + length + 1;
        if (length > LONGEST_LINE) {
            faults.at(
                    line.number(),
                    1,
                    Phrase.of("a line of {0} characters", length),
                    Phrase.of("write at most {0}", LONGEST_LINE));
        } else if (stretch > LONGEST_STRETCH) {
            faults.at(
                    line.number(),
                    1,
                    Phrase.of("more than {0} characters in one piece", LONGEST_STRETCH),
                    Phrase.of("leave an empty line"));
            stretch = 0;
            return true;
        }
        return length > LONGEST_LINE;
    }

    /** Whether the line opens or closes a block. */
    private boolean turnsFence(String text) {
        Matcher matcher = FENCE.matcher(text);
        if (!matcher.matches()) {
            return false;
        }
        String marks = matcher.group(1);
        if (fence.isEmpty()) {
            boolean code = marks.startsWith("`") && matcher.group(2).indexOf('`') >= 0;
            fence = code ? "" : marks;
            return !code;
        }
        boolean closes = marks.startsWith(fence) && matcher.group(2).isBlank();
        fence = closes ? "" : fence;
        return closes;
    }

    private String withoutTags(SourceLine line) {
        Matcher tag = TAG.matcher(line.text());
        if (!tag.find()) {
            return line.text();
        }
        faults.at(
                line.number(),
                line.column(tag.end() - 1),
                Phrase.of("HTML is not read"),
                Phrase.of("write it in Markdown, or a space after <"));
        return tag.replaceAll("$1‹");
    }
}
