package monochord.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** Finds the word that a slip of the finger may have meant. */
public final class Nearest {
    private static final int LONGEST = 60;

    private Nearest() {}

    /**
     * The word that takes the fewest changed letters: at most one in three, and one at least. Two neighbours that changed
     * places count as one change.
     */
    public static Optional<String> to(String written, Collection<String> words) {
        String small = written.toLowerCase(Locale.ROOT);
        if (small.isEmpty() || small.length() > LONGEST) {
            return Optional.empty();
        }
        int most = Math.max(1, small.length() / 3);
        DamerauLevenshteinDistance distance = new DamerauLevenshteinDistance(most);
        return words.stream()
                .filter(word -> Math.abs(word.length() - small.length()) <= most)
                .map(word -> new Near(word, distance.apply(small, word.toLowerCase(Locale.ROOT))))
                .filter(near -> near.changed >= 0)
                .min(Comparator.comparingInt(Near::changed))
                .map(Near::word);
    }

    /** @param changed letters; −1 if there are too many */
    private record Near(String word, int changed) {}
}
