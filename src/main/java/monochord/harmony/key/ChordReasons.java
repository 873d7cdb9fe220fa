package monochord.harmony.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;

/** What in a row of chords speaks for a key, in sentences that are true of these chords. */
final class ChordReasons {
    private static final int FEW = 3;
    private static final int FOURTH = 4;
    private static final int FIFTH = 5;
    private static final int SEVENTH = 7;

    private final List<Chord> chords;
    private final Key key;

    private ChordReasons(List<Chord> chords, Key key) {
        this.chords = chords;
        this.key = key;
    }

    static List<Phrase> of(ChordEvidence row, Key key) {
        ChordReasons reasons = new ChordReasons(row.chords(), key);
        List<Phrase> said = new ArrayList<>();
        reasons.edges().ifPresent(said::add);
        reasons.homecoming().ifPresent(said::add);
        said.add(reasons.own());
        return said;
    }

    private boolean isTonic(Chord chord) {
        TriadQuality quality = chord.kind().quality();
        return chord.root().equals(key.tonic())
                && (quality == TriadQuality.MINOR) == key.isMinor()
                && quality != TriadQuality.DIMINISHED
                && quality != TriadQuality.AUGMENTED;
    }

    private Optional<Phrase> edges() {
        Chord first = chords.get(0);
        Chord last = chords.get(chords.size() - 1);
        if (isTonic(first) && isTonic(last) && chords.size() > 1) {
            return Optional.of(Phrase.sentence("It begins and ends on the tonic chord, {0}.", first));
        } else if (isTonic(first)) {
            return Optional.of(Phrase.sentence("It begins on the tonic chord, {0}.", first));
        }
        return isTonic(last)
                ? Optional.of(Phrase.sentence("It ends on the tonic chord, {0}.", last))
                : Optional.empty();
    }

    /** The strongest way home that is there: from the dominant, from the chord below the tonic, from the subdominant. */
    private Optional<Phrase> homecoming() {
        Optional<Phrase> dominant = move((from, to) -> from.root().equals(key.note(FIFTH))
                        && from.kind().quality() == TriadQuality.MAJOR
                        && isTonic(to))
                .map(pair -> Phrase.sentence("{0} leads to {1}: the dominant comes home.", pair.get(0), pair.get(1)));
        return dominant.or(() -> move((from, to) ->
                                key.isMinor() && from.root().equals(key.note(SEVENTH)) && isTonic(to))
                        .map(pair ->
                                Phrase.sentence("{0} steps up to {1}, the tonic chord.", pair.get(0), pair.get(1))))
                .or(() -> move((from, to) -> from.root().equals(key.note(FOURTH)) && isTonic(to))
                        .map(pair ->
                                Phrase.sentence("{0} goes to {1}: the plagal way home.", pair.get(0), pair.get(1))));
    }

    private Optional<List<Chord>> move(BiPredicate<Chord, Chord> is) {
        for (int i = 1; i < chords.size(); i++) {
            if (is.test(chords.get(i - 1), chords.get(i))) {
                return Optional.of(chords.subList(i - 1, i + 1));
            }
        }
        return Optional.empty();
    }

    private Phrase own() {
        List<Chord> foreign =
                chords.stream().filter(chord -> !key.isOwn(chord)).distinct().toList();
        long different = chords.stream().distinct().count();
        if (foreign.isEmpty()) {
            return different == 1
                    ? Phrase.sentence("It is one of the key's own chords.")
                    : Phrase.sentence(
                            "All its chords are the key's own: {0}.",
                            Phrase.row(chords.stream()
                                    .distinct()
                                    .map(chord -> Numeral.of(chord, key))
                                    .toList()));
        }
        return foreign.size() <= FEW && foreign.size() < different
                ? Phrase.sentence("All its chords but {0} are the key's own.", Phrase.list(foreign))
                : Phrase.sentence(
                        "Of its {0} different chords {1} are the key's own.",
                        (int) different, (int) different - foreign.size());
    }
}
