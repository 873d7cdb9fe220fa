package monochord.harmony.tune;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.key.Counted;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarryingChordTest {
    private static List<CarryingChord> find(String note, String before, String goal, String key) {
        return CarryingChord.of(
                NoteName.parse(note),
                before == null ? null : Chord.parse(before),
                goal == null ? null : Chord.parse(goal),
                Key.parse(key),
                Counted.KEYS.chords());
    }

    /** Source: spelled by hand, the chords of the key, the borrowed ones and the applied dominants that hold the note. */
    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource(delimiter = '|', textBlock = """
            Ab | C major | Ab Fm Ddim Dm7b5 Db Bdim7
            F# | C major | D7 B7
            C  | C major | C F Am Cmaj7 Fmaj7 Am7 Dm7 C7 D7 Ab Fm Cm
            """)
    void listsEveryChordThatCarriesTheNote(String note, String key, String chords) {
        List<String> found = find(note, null, null, key).stream()
                .map(chord -> chord.bass().toString())
                .toList();
        for (String chord : chords.split(" ")) {
            assertTrue(found.contains(chord), () -> chord + " in " + found);
        }
    }

    @Test
    void everyChordHoldsTheNoteInEveryKey() {
        for (Key key : Key.majorKeys()) {
            for (int degree = 1; degree <= 7; degree++) {
                NoteName note = key.note(degree);
                List<CarryingChord> chords = CarryingChord.of(note, null, null, key, Counted.KEYS.chords());
                assertTrue(chords.size() >= 6);
                assertTrue(chords.stream().allMatch(chord -> chord.bass().holds(note)));
            }
        }
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "{0} between {1} and {2}")
    @CsvSource(delimiter = '|', textBlock = """
            A  | C  | G | F   | A is its third. It prepares G.
            D  | F  | C | G   | D is its fifth. It leads home to C.
            """)
    void putsFirstWhatPlayersExpect(String note, String before, String goal, String first, String why) {
        CarryingChord best = find(note, before, goal, "C").get(0);
        assertEquals(first, best.bass().toString());
        assertEquals(why, best.why().stream().map(Phrase::toString).collect(Collectors.joining(" ")));
    }
}
