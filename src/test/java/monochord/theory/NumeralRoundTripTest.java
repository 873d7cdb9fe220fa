package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;

/** Every degree with every kind of chord in every inversion; each chord of a key to its numeral and back. */
class NumeralRoundTripTest {
    private static final List<String> TARGETS = List.of("ii", "V", "bVI", "N", "V/ii");

    private static List<ChordKind> kinds() throws IOException {
        return Table.rows("chord-kinds.csv").stream()
                .map(row -> ChordKind.parse(row[0].equals("maj") ? "" : row[0]))
                .toList();
    }

    private static List<Numeral> numerals() throws IOException {
        List<Numeral> numerals = new ArrayList<>();
        for (int degree = 1; degree <= 7; degree++) {
            for (int alteration = -2; alteration <= 2; alteration++) {
                Degree root = Degree.of(degree, alteration);
                for (ChordKind kind : kinds()) {
                    Numeral bare = Numeral.of(degree, alteration, kind);
                    kind.intervals().forEach(tone -> numerals.add(bare.over(Interval.simple(tone.fifths()))));
                    Stream.of("2", "3", "b6", "##4")
                            .map(Degree::parse)
                            .filter(low -> !kind.holds(Interval.simple(low.fifths() - root.fifths())))
                            .forEach(low -> numerals.add(bare.over(low)));
                }
            }
        }
        Stream.of(
                        "N", "N6", "N64", "It6", "It53", "It64", "Fr43", "Fr7", "Fr65", "Fr42", "Ger65", "Ger7",
                        "Ger43", "Ger42", "Cad64")
                .map(Numeral::parse)
                .forEach(numerals::add);
        return numerals;
    }

    @Test
    void everyNumeralComesRound() throws IOException {
        List<Numeral> numerals = numerals();
        assertTrue(numerals.size() > 10_000, "only " + numerals.size());
        for (Numeral numeral : numerals) {
            assertEquals(numeral, Numeral.parse(numeral.toString()));
            assertEquals(numeral, Numeral.parse(numeral.write(Signs.MUSIC)));
        }
    }

    @Test
    void everyAppliedNumeralComesRound() throws IOException {
        for (Numeral numeral : numerals()) {
            for (String target : Math.abs(numeral.alteration()) < 2 ? TARGETS : List.<String>of()) {
                Numeral applied = numeral.appliedTo(Numeral.parse(target));
                assertEquals(applied, Numeral.parse(applied.toString()));
            }
        }
    }

    /** Whatever a chord is called in a key, the name leads back to the chord. */
    @Test
    void theNumeralOfAnyChordInAnyKeyNamesThatChord() throws IOException {
        for (Key key : keys()) {
            for (ChordKind kind : kinds()) {
                for (int fifths = -12; fifths <= 9; fifths++) {
                    NoteName root = key.note(Degree.ofFifths(fifths));
                    for (Interval tone : kind.intervals()) {
                        Chord chord = new Chord(root, kind, root.plus(tone));
                        Numeral numeral = Numeral.of(chord, key);
                        assertEquals(chord, numeral.in(key), () -> numeral + " in " + key);
                        assertEquals(chord, Numeral.parse(numeral.toString()).in(key), () -> numeral + " in " + key);
                    }
                }
            }
        }
    }

    private static List<Key> keys() {
        return Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream()).toList();
    }

    @Test
    void theNumberOfAnyChordInAnyKeyNamesThatChord() throws IOException {
        for (Key key : keys()) {
            for (ChordKind kind : kinds()) {
                for (int fifths = -12; fifths <= 9; fifths++) {
                    Chord chord = new Chord(key.note(Degree.ofFifths(fifths)), kind);
                    String number = BandNumber.write(chord, key, Signs.ASCII);
                    assertEquals(chord, BandNumber.parse(number, key).in(key), () -> number + " in " + key);
                }
            }
        }
    }
}
