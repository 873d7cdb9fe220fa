package monochord.harmony.key;

import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;

/**
 * How chords that go round come to an end: with a cadence on the tonic, which is held.
 *
 * <p>Sources: the cadences by the dominant and by the subdominant Open Music Theory (Shaffer, Hughes, Moseley, 2014), page
 * "cadenceTypes"; the one by steps from below its version 2, page "modal-schemas"; to hold the last chord and to play the
 * last two bars again: common practice, no source.
 */
final class LoopEnding {
    private static final int BARS_OF_A_TAG = 2;

    private LoopEnding() {}

    /** The usual cadences on the tonic of a key. */
    static List<List<Chord>> cadences(Key key) {
        Stream<String> rows =
                key.isMinor() ? Stream.of("V i", "iv i", "VI VII i") : Stream.of("V I", "IV I", "bVI bVII I");
        return rows.map(row -> Stream.of(row.split(" "))
                        .map(numeral -> Numeral.parse(numeral).in(key))
                        .toList())
                .toList();
    }

    /** @param bars how many bars the chords have, as written */
    static Phrase of(List<Chord> once, int bars, Key key) {
        Chord last = once.get(once.size() - 1);
        Phrase end = last.root().equals(key.tonic())
                ? Phrase.sentence("To end it, hold {0} for a bar or two.", last)
                : Phrase.sentence(
                        "To end it, close with {0}, and hold the last chord for a bar or two.",
                        Phrase.either(cadences(key).stream().map(Phrase::row).toList()));
        return bars > BARS_OF_A_TAG
                ? end.then(Phrase.sentence("For a tag, play the last two bars again before you end."))
                : end;
    }
}
