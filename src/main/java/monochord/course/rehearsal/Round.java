package monochord.course.rehearsal;

import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * What is played next, counted in.
 *
 * @param first bar, from 0 in the place
 * @param last bar, included
 * @param tempo beats a minute
 */
public record Round(int first, int last, int tempo, Key key) {
    public int bars() {
        return last - first + 1;
    }

    /** {@code bars 2 and 3}, with the numbers they have. */
    Phrase inWords(int firstBar) {
        return Round.bars(first + firstBar, last + firstBar);
    }

    static Phrase bars(int first, int last) {
        if (first == last) {
            return Phrase.of("bar {0}", first);
        }
        return last == first + 1
                ? Phrase.of("bars {0} and {1}", first, last)
                : Phrase.of("bars {0} to {1}", first, last);
    }
}
