package monochord.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The hanging indent of a line: its own spaces and the mark of a list item with the space behind it. */
final class HangingIndent {
    private static final Pattern LEAD = Pattern.compile(" *(?:(?:[-*•·]|[0-9]{1,2}[.)]) +)?");

    private HangingIndent() {}

    static int of(String line) {
        Matcher lead = LEAD.matcher(line);
        return lead.lookingAt() ? lead.end() : 0;
    }
}
