package monochord.harmony.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.after.ChordMove;
import monochord.harmony.after.Continuations;
import monochord.harmony.after.SongCounts;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;
import monochord.theory.note.Degree;

/**
 * A row of chords that goes round: one that is written twice or more, one that textbooks know as such, or a short one
 * whose last chord is not the tonic and leads on to its first.
 *
 * @param once the chords of one turn; of chords on one root and triad in a row the first
 * @param lead how the last chord leads back to the first, a sentence
 * @param schema its name in the textbooks, where it has one
 * @param ending how it may come to an end, in sentences
 */
public record Loop(List<Chord> once, Phrase lead, Optional<Phrase> schema, Phrase ending) {
    private static final int LONGEST_OPEN = 16;
    private static final int SHORTEST_OPEN = 3;
    private static final int BARS_OF_BLUES = 12;
    private static final Phrase BLUES = Phrase.of("12-bar blues");
    private static final List<String> BLUES_ROWS = List.of("I-IV-I-V-IV-I", "I-IV-I-V-IV-I-V", "I-IV-I-IV-I-V-IV-I-V");

    public Loop {
        once = List.copyOf(once);
    }

    /** @param bars how many bars the row has, as written */
    static Optional<Loop> of(List<Chord> row, int bars, Key key) {
        List<Chord> changes = changes(row);
        if (changes.size() < 2) {
            return Optional.empty();
        }
        if (bars == BARS_OF_BLUES && isBlues(changes, key)) {
            return Optional.of(
                    new Loop(changes, lead(changes, key), Optional.of(BLUES), LoopEnding.of(changes, bars, key)));
        }
        int period = period(changes);
        List<Chord> once = changes.subList(0, period);
        boolean isRepeated = period < changes.size();
        Optional<LoopSchema> schema = isRepeated || period > 2 ? LoopSchema.of(once, key) : Optional.empty();
        return isRepeated || schema.isPresent() || isOpen(changes, key)
                ? Optional.of(
                        new Loop(once, lead(once, key), schema.map(LoopSchema::title), LoopEnding.of(once, bars, key)))
                : Optional.empty();
    }

    /** Whether what goes round is long enough to tell a key by, and has a name there. */
    static boolean isNamed(List<Chord> row, Key key) {
        List<Chord> changes = changes(row);
        List<Chord> once = changes.isEmpty() ? changes : changes.subList(0, period(changes));
        return once.size() >= KeyWeights.SHORTEST_NAMED_LOOP
                && LoopSchema.of(once, key).isPresent();
    }

    /** Without chords that only vary the one before. */
    private static List<Chord> changes(List<Chord> row) {
        List<Chord> changes = new ArrayList<>();
        for (Chord chord : row) {
            if (changes.isEmpty() || !isSame(changes.get(changes.size() - 1), chord)) {
                changes.add(chord);
            }
        }
        return changes;
    }

    private static boolean isSame(Chord one, Chord other) {
        return one.root().equals(other.root())
                && one.kind().quality() == other.kind().quality();
    }

    private static boolean isBlues(List<Chord> changes, Key key) {
        List<Integer> seen = changes.stream()
                .map(chord -> ChordTable.chord(chord, key.tonic()))
                .toList();
        Key home = Key.major(key.tonic());
        return BLUES_ROWS.stream()
                .map(row -> List.of(row.split("-")).stream()
                        .map(numeral -> ChordTable.chord(Numeral.parse(numeral).in(home), home.tonic()))
                        .toList())
                .anyMatch(seen::equals);
    }

    /** The chords of one turn, of at least two turns; all of them if nothing comes again. */
    private static int period(List<Chord> changes) {
        int length = changes.size();
        return IntStream.rangeClosed(2, length / 2)
                .filter(period -> length % period == 0 || period > 2)
                .filter(period ->
                        IntStream.range(period, length).allMatch(i -> isSame(changes.get(i), changes.get(i - period))))
                .findFirst()
                .orElse(length);
    }

    private static boolean isOpen(List<Chord> changes, Key key) {
        Chord first = changes.get(0);
        Chord last = changes.get(changes.size() - 1);
        return changes.size() >= SHORTEST_OPEN
                && changes.size() <= LONGEST_OPEN
                && !last.root().equals(key.tonic())
                && !isSame(first, last)
                && Continuations.way(Numeral.of(last, key), Numeral.of(first, key), key, SongCounts.NONE)
                        .isPresent();
    }

    private static Phrase lead(List<Chord> once, Key key) {
        Chord last = once.get(once.size() - 1);
        Chord first = once.get(0);
        if (isSame(last, first)) {
            return Phrase.sentence("It comes back to where it began, {0}.", first);
        }
        return usual(last, first, key)
                .orElseGet(() -> Phrase.sentence(
                        "{0} leads back to {1}: {2}.", last, first, new ChordMove(last, first).inWords()));
    }

    /**
     * The everyday ways back.
     *
     * <p>Source: Open Music Theory (Shaffer, Hughes, Moseley, 2014), pages "cadenceTypes" and "popRockHarmony".
     */
    private static Optional<Phrase> usual(Chord last, Chord first, Key key) {
        boolean home = first.root().equals(key.tonic());
        boolean major = last.kind().quality() == TriadQuality.MAJOR;
        if (last.root().equals(key.note(5)) && major) {
            if (home) {
                return Optional.of(Phrase.sentence("{0} leads back to {1} as dominant to tonic.", last, first));
            } else if (first.root().equals(key.note(6))) {
                return Optional.of(Phrase.sentence(
                        "{0} leads back to {1}, a deceptive turn: the dominant would go to {2}.",
                        last,
                        first,
                        new Chord(
                                key.tonic(),
                                Numeral.parse(key.isMinor() ? "i" : "I").kind())));
            }
        }
        if (home && major && last.root().equals(key.note(Degree.of(7, -1)))) {
            return Optional.of(
                    Phrase.sentence("{0} leads back to {1}: a step up, home without a leading note.", last, first));
        }
        return home && last.root().equals(key.note(4))
                ? Optional.of(Phrase.sentence("{0} leads back to {1}, the plagal way home.", last, first))
                : Optional.empty();
    }
}
