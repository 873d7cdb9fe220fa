package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What lessons say of notes that stay and of notes that wait, computed in the fifteen major keys beside the words it stands
 * for. Source: the engine; what is held and what falls: Open Music Theory (2014), "embellishingTones".
 */
class HeldNotesInLessonsTest {
    private static Chord chord(String numeral, Key key) {
        return Numeral.parse(numeral).in(key);
    }

    private static Set<NoteName> degrees(String degrees, Key key) {
        return Arrays.stream(degrees.split(" "))
                .filter(degree -> !degree.isBlank())
                .map(degree -> Degree.parse(degree).above(key.tonic()))
                .collect(Collectors.toSet());
    }

    /** Which degrees two chords share. */
    @ParameterizedTest(name = "{0}: {1} and {2} share {3}")
    @CsvSource(delimiter = '|', textBlock = """
            3.1  | I       | vi      | 1 3 | Two notes are the same, ${degree 1} and ${degree 3}
            3.1  | IV      | V       | ''  | IV to V has no common tone in any key
            4.7  | IV      | Vsus4   | 1   | and ${degree 1} is in ${chord IV} too
            4.7  | IVadd9  | V       | 5   | but ${chord IVadd9} has ${degree 5}
            4.7  | IV      | V7      | 4   | and ${chord V7} has ${degree 4}
            5.2  | vi      | bVI     | 1   | Between them ${tonic} stayed put
            5.3  | bVII    | IV      | 4   | between ${chord bVII} and ${chord IV} it is ${degree 4} that stays
            5.7  | V       | bVI     | ''  | Nothing in common
            5.7  | Vsus4   | bVI     | 1   | Now ${degree 1} is in both chords
            5.7  | Vsus4   | bVImaj7 | 1 5 | Add the seventh to the borrowed chord and ${degree 5} can stay as well
            5.11 | Isus4   | iv      | 4 1 | has two of them, ${degree 4} and ${degree 1}
            5.11 | V7sus4  | iv      | 4 1 | has the same two
            5.11 | V       | iv      | ''  | The plain ${chord V} has none
            5.11 | I       | iv      | 1   | and ${chord I} has one
            5.11 | V7sus4  | bVII    | 2 4 | and both are in ${chord V7sus4}
            7.3  | iv      | bVI     | 1 b6 | share two notes, ${degree 1} and ${degree b6}
            7.4  | V       | bVII    | 2   | and they share one note, ${degree 2}
            """)
    void whatStays(String number, String first, String second, String shared, String words) throws IOException {
        LessonText.says(number, words);
        for (Key key : Key.majorKeys()) {
            Set<NoteName> both = new HashSet<>(chord(first, key).tones());
            both.retainAll(chord(second, key).tones());
            assertEquals(degrees(shared, key), both, key.toString());
        }
    }

    /** The waiting note was in the chord before, is the fourth of this one, and falls a step to its third. */
    @ParameterizedTest(name = "{0}: {1} waits in {2} after {4}, and falls to {3}")
    @CsvSource(delimiter = '|', textBlock = """
            4.9  | 1  | V    | 7 | IV     | that note is ${degree 1}
            5.11 | b3 | bVII | 2 | bVI    | stays and is the fourth of ${chord bVIIsus4}; then it falls to ${degree 2}
            5.11 | b6 | bIII | 5 | iv bVI | ${degree b6} stays as its fourth and falls to ${degree 5}
            """)
    void whatWaitsAndFalls(String number, String waiting, String chord, String falls, String before, String words)
            throws IOException {
        LessonText.says(number, words);
        for (Key key : Key.majorKeys()) {
            NoteName note = Degree.parse(waiting).above(key.tonic());
            Chord plain = chord(chord, key);
            assertTrue(
                    Stream.of(before.split(" ")).allMatch(one -> chord(one, key).holds(note)), key.toString());
            assertTrue(chord(chord + "sus4", key).holds(note) && !plain.holds(note), key.toString());
            NoteName third = Degree.parse(falls).above(key.tonic());
            assertEquals(plain.tones().get(1), third);
            int down = Math.floorMod(note.pitchClass() - third.pitchClass(), 12);
            assertTrue(down == 1 || down == 2, key + ": " + down);
        }
    }

    @Test
    @DisplayName("5.11: the fourth above ♭6 is ♭2, which neither the key nor its parallel minor has; the second is ♭7")
    void flatSixHasNoFourthToHold() throws IOException {
        LessonText.says("5.11", "is ${degree b2}, which neither your key nor its parallel minor has");
        for (Key key : Key.majorKeys()) {
            NoteName fourth = chord("bVIsus4", key).tones().get(1);
            assertEquals(Degree.parse("b2").above(key.tonic()), fourth);
            assertFalse(key.holds(fourth) || key.parallel().holds(fourth), key.toString());
            assertEquals(
                    degrees("b7", key), Set.of(chord("bVIsus2", key).tones().get(1)));
        }
    }

    @Test
    @DisplayName(
            "6.4, 5.7: the suspended five shares the tonic with ♭VI and so takes the surprise away; both lessons say so")
    void whetherToSoften() throws IOException {
        LessonText.says("6.4", "it makes the change smoother and takes some of the surprise away");
        LessonText.says("5.7", "*Before* it: the borrowed chord arrives gently. The surprise is in the bass.");
        for (Key key : Key.majorKeys()) {
            Set<NoteName> held = new HashSet<>(chord("Vsus4", key).tones());
            held.retainAll(chord("bVI", key).tones());
            assertEquals(1, held.size(), "one voice stands still");
            assertTrue(held.contains(key.tonic()));
        }
    }

    @Test
    @DisplayName("5.12: third and seventh of ♭VImaj7 are 1 and 5; without its root it has ♭3 besides")
    void whatIsLeftWithoutTheRoot() throws IOException {
        LessonText.says("5.12", "that leaves ${degree 1} and ${degree 5} in the left, and ${degree b3} in the right");
        for (Key key : Key.majorKeys()) {
            List<NoteName> tones = chord("bVImaj7", key).tones();
            assertEquals(degrees("1", key), Set.of(tones.get(1)));
            assertEquals(degrees("b3", key), Set.of(tones.get(2)));
            assertEquals(degrees("5", key), Set.of(tones.get(3)));
        }
    }

    @Test
    @DisplayName("2.9: in minor the major 4 has the raised sixth as its third, the major last chord the raised third")
    void whatIsMajorInMinor() throws IOException {
        LessonText.says("2.9", "for the sixth is its third");
        LessonText.says("2.9", "Only the third of the last chord goes up.");
        for (Key key : Key.majorKeys()) {
            Key minor = key.relative();
            assertEquals(
                    Degree.parse("6").above(minor.tonic()),
                    chord("IV", minor).tones().get(1));
            assertEquals(
                    Degree.parse("b6").above(minor.tonic()),
                    chord("iv", minor).tones().get(1));
            List<NoteName> last = chord("I", minor).tones();
            List<NoteName> first = chord("i", minor).tones();
            assertEquals(List.of(first.get(0), first.get(2)), List.of(last.get(0), last.get(2)));
            assertEquals(
                    1, Math.floorMod(last.get(1).pitchClass() - first.get(1).pitchClass(), 12));
            assertTrue(chord("V", minor).holds(Degree.parse("7").above(minor.tonic())));
        }
    }
}
