package monochord.cell;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Key;

/** The cells that went well, in order, and how it went to run them again. */
final class CellHistory {
    private static final int MOST = 1000;

    private final List<Earlier> good = new ArrayList<>();
    private final Deque<Earlier> ahead = new ArrayDeque<>();
    private int lost;

    /** @param key the key of the line at that time */
    record Earlier(String text, Key key) {}

    boolean isEmpty() {
        return good.isEmpty();
    }

    /** Remembers a cell if it went well. */
    void keep(String text, Key key, RunEnd end) {
        if (end == RunEnd.GOOD && good.size() < MOST) {
            good.add(new Earlier(text, key));
        }
    }

    /** From the first cell on. */
    void begin() {
        ahead.clear();
        ahead.addAll(good);
    }

    Optional<Earlier> next() {
        return Optional.ofNullable(ahead.poll());
    }

    /** Forgets a cell that does not go well again, and if it ended the JVM those behind it, too. */
    void note(Earlier cell, RunEnd end) {
        if (end == RunEnd.GOOD) {
            return;
        }
        List<Earlier> gone = new ArrayList<>(List.of(cell));
        if (end.isFatal()) {
            gone.addAll(ahead);
        }
        lost += gone.size();
        good.removeIf(kept -> gone.stream().anyMatch(other -> other == kept));
    }

    /** What the learner is to know about it. */
    Phrase news() {
        Phrase again = Phrase.counted(
                good.size(),
                new Phrase.Forms(
                        "It begins anew; the one cell that went well before has been run again.",
                        "It begins anew; the {0} cells that went well before have been run again.",
                        "It begins anew."),
                good.size());
        Phrase left =
                lost == 0 ? Phrase.NOTHING : Phrase.sentence("Left out, for it did not go well this time: {0}.", lost);
        lost = 0;
        return again.then(left);
    }
}
