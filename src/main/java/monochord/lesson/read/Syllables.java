package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The words of a song's first verse, parted into a syllable a note: {@code -} parts them, {@code _} holds the last one,
 * {@code *} passes a note by, {@code ~} is a space within one.
 *
 * <p>Source: the ABC standard 2.1, section 5, whose signs a song file uses.
 */
final class Syllables {
    private static final Pattern WORD = Pattern.compile("[^\\s|]+");
    private static final Pattern SYLLABLE = Pattern.compile("[_*]|[^-_*]+-?");

    private Syllables() {}

    /** As many as there are notes, empty where none is sung; what is left over is left out. */
    static List<String> of(List<String> lines, int notes) {
        List<String> syllables = new ArrayList<>();
        lines.stream()
                .dropWhile(String::isBlank)
                .takeWhile(line -> !line.isBlank())
                .flatMap(line -> WORD.matcher(line).results())
                .flatMap(word -> SYLLABLE.matcher(word.group()).results())
                .map(syllable -> syllable.group())
                .forEach(syllable ->
                        syllables.add(syllable.equals("_") || syllable.equals("*") ? "" : syllable.replace('~', ' ')));
        while (syllables.size() < notes) {
            syllables.add("");
        }
        return List.copyOf(syllables.subList(0, notes));
    }
}
