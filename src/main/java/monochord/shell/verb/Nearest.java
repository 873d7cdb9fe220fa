package monochord.shell.verb;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word a slip of the finger may have meant. */
public final class Nearest {
    private static final int LONGEST = 40;

    private Nearest() {}

    /** The word that takes the fewest changed letters: at most one in three, two where two letters may have been swapped. */
    public static Optional<String> to(String typed, Collection<String> words) {
        String word = typed.toLowerCase(Locale.ROOT);
        int farthest = word.length() <= 3 ? 1 : Math.max(2, word.length() / 3);
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        LevenshteinDistance distance = new LevenshteinDistance(farthest);
        return words.stream()
                .filter(candidate -> distance.apply(word, candidate) >= 0)
                .min(Comparator.comparingInt(candidate -> distance.apply(word, candidate)));
    }
}
