package monochord.practice.reading;

import java.util.List;
import java.util.regex.Pattern;

/**
 * How people say what musicians write with a sign.
 *
 * @param written what they say
 * @param meant what stands for it in the text that is then read
 */
record SpokenWord(Pattern written, String meant) {
    /** Each word in turn, wherever it comes. */
    static String replace(List<SpokenWord> words, String text) {
        String replaced = text;
        for (SpokenWord word : words) {
            replaced = word.written.matcher(replaced).replaceAll(word.meant);
        }
        return replaced;
    }
}
