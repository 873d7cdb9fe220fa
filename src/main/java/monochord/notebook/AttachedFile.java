package monochord.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file that a sitting opened, kept in its notebook so that the notebook can be typed again wherever it is.
 *
 * <p>Text form: a fenced block with the word {@code song} and the name as it was typed.
 */
public record AttachedFile(String name, String text) {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^(`{3,})song ([^\\n`]+)\\n(.*?)^\\1`*[ \\t]*$");
    private static final Pattern FENCE = Pattern.compile("(?m)^ {0,3}(`{3,})");

    /** Those that stand in prose, in order. */
    static List<AttachedFile> in(String prose) {
        List<AttachedFile> files = new ArrayList<>();
        Matcher block = BLOCK.matcher(prose);
        while (block.find()) {
            files.add(new AttachedFile(block.group(2).strip(), block.group(3)));
        }
        return files;
    }

    @Override
    public String toString() {
        int longest = 2;
        Matcher fences = FENCE.matcher(text);
        while (fences.find()) {
            longest = Math.max(longest, fences.group(1).length());
        }
        String fence = "`".repeat(longest + 1);
        return fence + "song " + name + "\n" + text + (text.endsWith("\n") || text.isEmpty() ? "" : "\n") + fence;
    }
}
