package monochord.song.musicxml;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import monochord.text.Phrase;
import monochord.theory.note.Beats;

/**
 * How long the bars of a sheet are: all alike, but that the first may be a pick-up and the last may fall short.
 *
 * @param bar beats in a full bar
 * @param pickup beats before the first full bar
 * @param count full bars
 */
record BarLengths(Beats bar, Beats pickup, int count) {
    /** The length that most bars have, of equally many the longer. */
    private static Beats commonest(List<Beats> bars) {
        return bars.stream()
                .max(Comparator.comparingInt((Beats beats) -> Collections.frequency(bars, beats))
                        .thenComparing(Comparator.naturalOrder()))
                .orElseThrow();
    }

    static BarLengths of(List<Beats> lengths) throws SheetFault {
        List<Beats> bars = lengths.stream().filter(beats -> !beats.isZero()).toList();
        if (bars.isEmpty()) {
            throw new SheetFault(Phrase.of("its bars are empty"));
        }
        int last = bars.size() - 1;
        Beats bar = last >= 2 ? commonest(bars) : bars.get(0).longerOf(bars.get(last));
        Beats first = bars.get(0);
        boolean pickup = last > 0 && first.compareTo(bar) < 0;
        for (int i = 0; i <= last; i++) {
            int difference = bars.get(i).compareTo(bar);
            if (difference > 0 || difference < 0 && i > 0 && i < last) {
                throw new SheetFault(Phrase.of(
                        "bar {0} has {1} beats where the others have {2}; one metre is read",
                        i + 1, Phrase.quoted(bars.get(i).toString()), Phrase.quoted(bar.toString())));
            }
        }
        return new BarLengths(bar, pickup ? first : Beats.ZERO, bars.size() - (pickup ? 1 : 0));
    }
}
