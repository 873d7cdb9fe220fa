package monochord.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file that a sitting opened, kept in its notebook so that the notebook can be typed again wherever it is.
 *
 * <p>Text form: a fenced block with its word and the name as it was typed.
 *
 * @param word what it is: a {@code song}, or another {@code file}
 */
public record AttachedFile(String word, String name, String text) {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^(`{3,})(song|file) ([^\\n`]+)\\n(.*?)^\\1`*[ \\t]*$");
    private static final Pattern FENCE = Pattern.compile("(?m)^ {0,3}(`{3,})");

    public static AttachedFile song(String name, String text) {
        return new AttachedFile("song", name, text);
    }

    /** Anything but a song. */
    public static AttachedFile file(String name, String text) {
        return new AttachedFile("file", name, text);
    }

    /** Those that stand in prose, in order. */
    static List<AttachedFile> in(String prose) {
        List<AttachedFile> files = new ArrayList<>();
        Matcher block = BLOCK.matcher(prose);
        while (block.find()) {
            files.add(new AttachedFile(block.group(2), block.group(3).strip(), block.group(4)));
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
        return fence + word + " " + name + "\n" + text + (text.endsWith("\n") || text.isEmpty() ? "" : "\n") + fence;
    }
}
