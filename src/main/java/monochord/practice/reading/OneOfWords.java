package monochord.practice.reading;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the one word of a few that a sentence says: {@code it is a 4-3 suspension}. */
public final class OneOfWords {
    private static final Pattern DENIED =
            Pattern.compile("(?<![a-z])(?:not?|never|neither|nor|or|n't|without)(?![a-z])|n't");

    private OneOfWords() {}

    /**
     * What the words in the text stand for, if all of them stand for the same and none is denied.
     *
     * @param names words in small letters, and what each stands for
     * @param text in small letters
     */
    public static <T> Optional<T> in(Map<String, T> names, String text) {
        if (DENIED.matcher(text).find()) {
            return Optional.empty();
        }
        Set<T> said = new HashSet<>();
        names.forEach((word, meaning) -> {
            Matcher found = Pattern.compile("(?<![\\p{L}])" + Pattern.quote(word) + "(?![\\p{L}])")
                    .matcher(text);
            if (found.find()) {
                said.add(meaning);
            }
        });
        return said.size() == 1 ? Optional.of(said.iterator().next()) : Optional.empty();
    }
}
