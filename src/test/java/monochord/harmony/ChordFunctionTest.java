package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which chord does what. */
class ChordFunctionTest {
    private static ChordFunction function(String numeral, Key key) {
        return numeral == null ? null : ChordFunction.of(Numeral.parse(numeral).in(key), key);
    }

    /** Source: Open Music Theory (2014), page "harmonicFunctions"; borrowed chords, Integrated Music Theory, 16a. */
    @ParameterizedTest(name = "{0} in {1} is {2}")
    @CsvSource({
        "I, C, T",
        "vi, C, T",
        "iii, C, T",
        "ii, C, S",
        "IV, C, S",
        "V, C, D",
        "V7, C, D",
        "viio, C, D",
        "vii, C, colour",
        "Vsus4, C, D",
        "iv, C, S",
        "iio, C, S",
        "bVI, C, S",
        "bVII, C, S",
        "bII, C, S",
        "viio7, C, D",
        "bIII, C, colour",
        "v, C, colour",
        "i, C, T",
        "V7/V, C, D",
        "i, A minor, T",
        "VI, A minor, T",
        "III, A minor, T",
        "V, A minor, D",
        "v, A minor, colour",
        "iv, A minor, S",
        "viio, A minor, D"
    })
    void knowsWhatEachChordDoes(String numeral, String key, String function) {
        assertEquals(function, function(numeral, Key.parse(key)).main().toString());
    }

    /**
     * Sources: Open Music Theory (2014), "harmonicFunctions" (I vi V I: the sixth before the dominant prepares it),
     * "cadenceTypes" (V vi: the deceptive cadence) and "appliedChords" (V/V before V); Integrated Music Theory, 16a, for
     * bVI behind and before V. A chord between two dominants does both: our conclusion.
     */
    @ParameterizedTest(name = "{1} between {0} and {2} in {3} is {4}")
    @CsvSource({
        "V, vi, IV, C, T",
        "I, vi, V, C, S",
        "I, vi, IV, C, T",
        "V, vi, V, C, T S",
        "V, bVI, bVII, C, T",
        "IV, bVI, V7, C, S",
        "I, bVI, bVII, C, T S",
        "V7/vi, vi, ii, C, T",
        ", vi, , C, T",
        "I, V7/V, V, C, S",
        "I, V7/vi, vi, C, ''",
        "I, V7/V, IV, C, ''",
        "V, IV, V, C, S",
        "i, VI, V, A minor, S",
        "V, VI, iv, A minor, T"
    })
    void knowsWhatAChordDoesInItsPlace(String before, String numeral, String next, String key, String functions) {
        Key in = Key.parse(key);
        Set<HarmonicFunction> found = function(numeral, in).between(function(before, in), function(next, in));
        assertEquals(functions, found.stream().map(HarmonicFunction::toString).collect(Collectors.joining(" ")));
    }

    @Test
    @DisplayName("no triad is a dominant of its key but one with the leading note, or the fourth over the fifth")
    void aDominantHasTheLeadingNote() {
        int dominants = 0;
        for (Key key : Key.majorKeys()) {
            NoteName leading = key.note(Degree.of(7, 0));
            for (Borrowing.Borrowed one : Borrowing.table(key)) {
                Chord chord = one.chord();
                if (ChordFunction.of(chord, key).isDominantOfKey()) {
                    dominants++;
                    assertTrue(chord.holds(leading), () -> chord + " in " + key);
                }
            }
        }
        assertTrue(dominants >= Key.majorKeys().size(), "only " + dominants);
    }

    @Test
    @DisplayName("transposed, a chord does the same")
    void theSameInEveryKey() {
        Key c = Key.parse("C");
        for (Key key : Key.majorKeys()) {
            for (Borrowing.Borrowed one : Borrowing.table(c)) {
                Chord there = one.chord().plus(c.tonic().to(key.tonic()));
                assertEquals(
                        ChordFunction.of(one.chord(), c),
                        ChordFunction.of(there, key),
                        () -> one.chord() + " in " + key);
            }
        }
    }

    @Test
    @DisplayName("the round goes from tonic to subdominant to dominant to tonic, and a colour leads nowhere")
    void theRound() {
        String leads = Arrays.stream(HarmonicFunction.values())
                .map(from -> from + ":"
                        + Arrays.stream(HarmonicFunction.values())
                                .filter(from::leadsTo)
                                .map(HarmonicFunction::toString)
                                .collect(Collectors.joining(",")))
                .collect(Collectors.joining(" "));
        assertEquals("T:S,D S:T,D D:T colour:", leads);
    }
}
