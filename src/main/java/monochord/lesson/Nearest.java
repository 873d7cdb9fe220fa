package monochord.lesson;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word that was probably meant. */
public final class Nearest {
    private static final int LONGEST = 60;

    private Nearest() {}

    /** The word at the least distance, if at most a third of its letters (one at least) need changing. */
    public static Optional<String> to(String written, Collection<String> words) {
        String small = written.toLowerCase(Locale.ROOT);
        if (small.length() > LONGEST) {
            return Optional.empty();
        }
        return words.stream()
                .filter(word -> distance(small, word) <= Math.max(1, word.length() / 3))
                .min(Comparator.comparingInt(word -> distance(small, word)));
    }

    private static int distance(String small, String word) {
        return LevenshteinDistance.getDefaultInstance().apply(small, word.toLowerCase(Locale.ROOT));
    }
}
