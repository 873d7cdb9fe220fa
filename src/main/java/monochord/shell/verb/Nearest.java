package monochord.shell.verb;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** Finds the word a slip of the finger may have meant. */
public final class Nearest {
    private static final int LONGEST = 40;

    private Nearest() {}

    /**
     * The word that takes the fewest changed letters, at most one in three; none if all are farther. Two neighbours that
     * changed places count as one change.
     */
    public static Optional<String> to(String typed, Collection<String> words) {
        String word = typed.toLowerCase(Locale.ROOT);
        int farthest = Math.max(1, word.length() / 3);
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        DamerauLevenshteinDistance distance = new DamerauLevenshteinDistance(farthest);
        return words.stream()
                .filter(candidate -> distance.apply(word, candidate) >= 0)
                .min(Comparator.comparingInt(candidate -> distance.apply(word, candidate)));
    }
}
