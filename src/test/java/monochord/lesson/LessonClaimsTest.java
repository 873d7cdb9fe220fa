package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import monochord.harmony.melody.Standing;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingRules;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * General sentences of the lessons, computed in the fifteen major keys. Each test quotes the words that it stands for, so
 * that it fails where the lesson says something else.
 *
 * <p>Source: the engine, whose own tables name theirs; what a tune may rest on is common practice, no source.
 */
class LessonClaimsTest {
    private static Chord chord(String numeral, Key key) {
        return Numeral.parse(numeral).in(key);
    }

    private static NoteName degree(String degree, Key key) {
        return Degree.parse(degree).above(key.tonic());
    }

    /** What a lesson says of a long note of the tune is what {@code fit} says. */
    @ParameterizedTest(name = "{0}: {1} over {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            5.2 | 1     | bVI             | CHORD_TONE | under a melody that rests on ${degree 1}
            5.2 | 3 6 7 | bVI             | CLASH      | A long ${degree 3} or ${degree 6} clashes with it
            5.4 | 6     | iv ii°          | CLASH      | A long ${degree 6} in the tune clashes with both
            5.4 | 7     | iv              | CLASH      | Over iv a long ${degree 7} clashes too
            5.4 | 3     | iv              | TENSE      | a colour with an edge
            5.4 | 4     | iv ii°          | CHORD_TONE | On ${degree 4} the tune may rest over both
            5.4 | 1     | iv              | CHORD_TONE | and on ${degree 1} over iv
            5.6 | 1 5   | bVImaj7         | CHORD_TONE | With the seventh it has a second, ${degree 5}
            5.6 | 3 6 7 | bVImaj7         | CLASH      | no room for a long ${degree 3}, ${degree 6} or ${degree 7}
            5.9 | 4     | bII             | CHORD_TONE | A long ${degree 4} sits well on it
            5.9 | 1     | bII             | COLOUR     | So does ${degree 1}, as a major seventh
            5.9 | 2 3 6 | bII             | CLASH      | A long ${degree 2}, ${degree 3} or ${degree 6} does not
            6.2 | 1     | bVI iv i        | CHORD_TONE | On **1**: ♭VI (as its third), iv (as its fifth), i (as its root)
            6.2 | 2     | bVII ii°        | CHORD_TONE | On **2**: ♭VII (its third), ii° (its root)
            6.2 | 4     | bVII iv ii° bII | CHORD_TONE | On **4**: ♭VII (its fifth), iv (its root), ii° (its third), ♭II
            6.2 | 5     | bIII i bVImaj7  | CHORD_TONE | On **5**: ♭III (its third), i (its fifth), and ♭VImaj7
            6.2 | 5     | iv              | COLOUR     | 5 over iv, for example
            6.2 | 1     | bVII            | COLOUR     | or 1 over ♭VII
            6.2 | 6     | i bIII bVII     | COLOUR     | 6 is a colour over i, ♭III and ♭VII
            6.2 | 3     | bVII            | COLOUR     | and 3 over ♭VII
            6.2 | 3     | iv              | TENSE      | 3 over iv and 7 over i are major sevenths over a minor chord
            6.2 | 7     | i               | TENSE      | 3 over iv and 7 over i are major sevenths over a minor chord
            6.2 | 3     | bVI bIII i      | CLASH      | These clash: 3 over ♭VI, ♭III and i
            6.2 | 6     | bVI iv ii°      | CLASH      | 6 over ♭VI, iv and ii°
            6.2 | 7     | bVI bIII bVII iv | CLASH     | 7 over ♭VI, ♭III, ♭VII and iv
            """)
    void whatATuneMayRestOn(String number, String degrees, String chords, Standing standing, String words)
            throws IOException {
        LessonText.says(number, words);
        for (Key key : Key.majorKeys()) {
            for (String numeral : chords.split(" ")) {
                for (String degree : degrees.split(" ")) {
                    assertEquals(
                            standing,
                            Standing.of(degree(degree, key), chord(numeral, key)),
                            degree + " over " + numeral + " in " + key);
                }
            }
        }
    }

    @Test
    @DisplayName("6.2: no borrowed chord that was met has 3, 6 or 7 among its tones")
    void noBorrowedChordHasTheNotesThatItLowered() throws IOException {
        LessonText.says("6.2", "- On **3**, **6**, **7**: none.");
        for (Key key : Key.majorKeys()) {
            for (String numeral : List.of("bVI", "bVII", "bIII", "iv", "ii°", "i", "bII")) {
                List.of("3", "6", "7")
                        .forEach(degree ->
                                assertTrue(!chord(numeral, key).holds(degree(degree, key)), numeral + " in " + key));
            }
        }
    }

    /** From each note of the first row to the one under it, in half steps. */
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvSource(delimiter = '|', textBlock = """
            3.4 | 4 6 1 | 2 5 7    | -3 -2 -1 | ${degree 4} to ${degree 2}, ${degree 6} to ${degree 5}, ${degree 1} to ${degree 7}
            3.4 | 5 2 7 | 3 1 1    | -3 -2 1  | ${degree 5} falls to ${degree 3} and ${degree 2} falls to ${degree 1}
            5.2 | 5 2 7 | b3 1 1   | -4 -2 1  | ${degree 5} falls to ${degree b3} and ${degree 2} falls to ${degree 1}
            5.2 | 7     | b6       | -3       | down to ${degree b6} it would be three half steps
            5.10 | b6 b3 b7 b2 | 5 2 6 1 | -1 -1 -1 -1 | ${degree b6} falls to ${degree 5}, ${degree b3} to ${degree 2}, ${degree b7} to ${degree 6}
            """)
    void howFingersMove(String number, String from, String to, String halfSteps, String words) throws IOException {
        LessonText.says(number, words);
        String[] starts = from.split(" ");
        String[] ends = to.split(" ");
        String[] moves = halfSteps.split(" ");
        for (Key key : Key.majorKeys()) {
            for (int i = 0; i < starts.length; i++) {
                int moved = Integer.parseInt(moves[i]);
                int start = degree(starts[i], key).pitchClass();
                assertEquals(
                        degree(ends[i], key).pitchClass(), Math.floorMod(start + moved, 12), starts[i] + " in " + key);
            }
        }
    }

    @Test
    @DisplayName("3.3: 5 is in I and V6, and not in the chord between I and I6")
    void theFifthIsNotHeldOverTheDiminishedChord() throws IOException {
        LessonText.says("3.3", "with your own top note held on ${degree 5}, which is in both of its chords");
        for (Key key : Key.majorKeys()) {
            NoteName five = degree("5", key);
            assertTrue(chord("I", key).holds(five) && chord("V6", key).holds(five));
            assertTrue(!chord("viio6", key).holds(five));
            assertTrue(chord("I", key).holds(degree("3", key)));
            assertTrue(chord("viio6", key).holds(degree("2", key)));
            assertTrue(chord("I6", key).holds(degree("1", key)));
        }
    }

    @Test
    @DisplayName("3.5, 3.7, 5.9: what may be doubled is what voice and the questions let be doubled")
    void whatMayBeDoubled() throws IOException {
        LessonText.says("3.5", "its third is the leading note, ${degree 7}, and that is played once");
        LessonText.says("3.7", "its bass is ${degree 4}, a firm note of the key, and the right hand may have it too");
        LessonText.says("5.9", "The right hand may have ${degree 4} as well");
        for (Key key : Key.majorKeys()) {
            assertEquals(List.of(), doubled("ii6", key), "ii6 in " + key);
            assertEquals(List.of(), doubled("bII6", key), "♭II6 in " + key);
            assertEquals(List.of("ONE_LEADING_NOTE"), doubled("V6", key), "V6 in " + key);
        }
    }

    /** The rules broken by a chord over its bass, with the bass once more in the right hand. */
    private static List<String> doubled(String numeral, Key key) {
        Chord chord = chord(numeral, key);
        Pitch bass = Pitch.atOrAbove(chord.bass(), Pitch.parse("C3"));
        List<Pitch> right = new ArrayList<>();
        Pitch floor = Pitch.parse("C4");
        for (NoteName tone : chord.tones()) {
            right.add(Pitch.atOrAbove(tone, floor));
        }
        right.sort(null);
        Voicing voicing = new Voicing(List.of(bass), right);
        return VoicingRules.broken(voicing, chord, key, new Reach(Reach.LARGEST)).stream()
                .map(broken -> broken.rule().name())
                .toList();
    }

    @Test
    @DisplayName("4.4: V7/iii has two notes from outside the key, V7/V, V7/vi, V7/ii and V7/IV one")
    void whatAppliedDominantsRaise() throws IOException {
        LessonText.says("4.4", "V7/iii brings a second sharp with it");
        for (Key key : Key.majorKeys()) {
            assertEquals(2, strangers(chord("V7/iii", key), key), key.toString());
            for (String one : List.of("V7/V", "V7/vi", "V7/ii", "V7/IV")) {
                assertEquals(1, strangers(chord(one, key), key), one + " in " + key);
            }
            assertTrue(chord("V7/IV", key).holds(degree("b7", key)));
        }
    }

    private static long strangers(Chord chord, Key key) {
        return chord.tones().stream().filter(tone -> !key.holds(tone)).count();
    }

    @Test
    @DisplayName("4.6: 7, 9, 11 and 13 have a seventh, 6, 6/9 and add9 none")
    void whichNumbersHaveASeventh() throws IOException {
        LessonText.says("4.6", "A 7, a 9, an 11 or a 13 without a word before it means that there is a seventh");
        for (Key key : Key.majorKeys()) {
            for (String number : List.of("7", "9", "11", "13")) {
                assertTrue(hasSeventh(key.tonic() + number), number);
            }
            for (String number : List.of("6", "6/9", "add9")) {
                assertTrue(!hasSeventh(key.tonic() + number), number);
            }
        }
    }

    private static boolean hasSeventh(String symbol) {
        return Chord.parse(symbol).kind().interval(7).isPresent();
    }

    @Test
    @DisplayName("4.8: C11 as it is played is C9sus4, without its fifth B♭ over C")
    void theEleventhChordWithoutItsThird() throws IOException {
        LessonText.says("4.8", "which is the same as ${C9sus4}; without the ${G} it is ${B♭} over ${C}");
        for (Key key : Key.majorKeys()) {
            Chord suspended = Chord.parse(key.tonic() + "9sus4");
            Chord over = Chord.parse(degree("b7", key) + "/" + key.tonic());
            Set<NoteName> played = new HashSet<>(suspended.tones());
            assertTrue(played.remove(key.tonic().plus(Interval.PERFECT_FIFTH)));
            Set<NoteName> slash = new HashSet<>(over.tones());
            slash.add(over.bass());
            assertEquals(slash, played, key.toString());
        }
    }

    @Test
    @DisplayName(
            "1.7, 5.1, 5.2: the relative's natural scale has no new note, its raised seventh is the third of V7/vi")
    void whatTheRelativeHas() throws IOException {
        LessonText.says("1.7", "The natural scale of the relative has nothing to lend");
        LessonText.says("5.1", "the raised seventh, you know as the third of V7/vi");
        LessonText.says("5.2", "its natural scale has the notes you began with");
        for (Key key : Key.majorKeys()) {
            NoteName tonic = key.relative().tonic();
            Scale natural = new Scale(tonic, ScaleKind.MINOR);
            assertTrue(natural.tones().stream().allMatch(key::holds), key.toString());
            NoteName raised = tonic.plus(Interval.MAJOR_SEVENTH);
            assertEquals(degree("#5", key), raised);
            assertTrue(chord("V7/vi", key).holds(raised) && !key.holds(raised), key.toString());
        }
    }

    @Test
    @DisplayName("5.1: the parallel minor has fewer signs from two sharps on, more in G, C and the flat keys")
    void howManySignsTheNeighbourHas() throws IOException {
        LessonText.says("5.1", "From two sharps on the neighbour has *fewer* signs than you");
        for (Key key : Key.majorKeys()) {
            int sharps = key.signature();
            assertEquals(sharps >= 2, Math.abs(sharps - 3) < Math.abs(sharps), key.toString());
            assertEquals(sharps - 3, Key.minor(key.tonic()).signature());
        }
    }

    @Test
    @DisplayName(
            "1.8: the minor pentatonic lies in natural minor, Dorian and Phrygian, and in no other minor that was met")
    void whereTheMinorPentatonicFits() throws IOException {
        LessonText.says("1.8", "it lies inside natural minor, and inside Dorian and Phrygian");
        for (Key key : Key.majorKeys()) {
            List<NoteName> five = new Scale(key.tonic(), ScaleKind.MINOR_PENTATONIC).tones();
            for (ScaleKind kind : List.of(
                    ScaleKind.MINOR,
                    ScaleKind.DORIAN,
                    ScaleKind.PHRYGIAN,
                    ScaleKind.HARMONIC_MINOR,
                    ScaleKind.MELODIC_MINOR)) {
                boolean raised = kind == ScaleKind.HARMONIC_MINOR || kind == ScaleKind.MELODIC_MINOR;
                assertEquals(!raised, new Scale(key.tonic(), kind).tones().containsAll(five), kind + " on " + key);
            }
        }
    }

    @Test
    @DisplayName("1.2, 1.4: the tune for the new sign plays all seven notes, so the new one too")
    void theTuneHasTheNewSign() throws IOException {
        String rowDown = "1 7 6 5, 4 3 2 1";
        LessonText.says("1.2", rowDown);
        LessonText.says("1.4", rowDown);
        for (Key key : Key.majorKeys()) {
            if (key.signature() == 7) {
                continue;
            }
            Key above = Key.major(degree("5", key));
            Set<NoteName> played = new HashSet<>();
            Stream.of(rowDown.split("[ ,]+")).forEach(number -> played.add(degree(number, above)));
            List<NoteName> fresh =
                    played.stream().filter(note -> !key.holds(note)).toList();
            assertEquals(List.of(degree("#4", key)), fresh, key.toString());
        }
    }

    @Test
    @DisplayName("6.3: ♭II to V leaps six half steps in the bass, ♭II6 to V goes up by a step")
    void whyAChordIsTurnedOver() throws IOException {
        LessonText.says(
                "6.3", "From ♭II to V the roots lie six half steps apart. Over its third, ♭II goes to V by a step.");
        for (Key key : Key.majorKeys()) {
            int five = degree("5", key).pitchClass();
            assertEquals(6, Math.floorMod(five - chord("bII", key).bass().pitchClass(), 12));
            assertEquals(2, Math.floorMod(five - chord("bII6", key).bass().pitchClass(), 12));
        }
    }

    @Test
    @DisplayName("6.5: ♭VI lies a major third under the tonic, ♭VII a whole step")
    void whereBorrowedRootsLie() throws IOException {
        LessonText.says("6.5", "a whole step under the tonic it will be ♭VII, a *major* third under it ♭VI");
        for (Key key : Key.majorKeys()) {
            assertEquals(
                    key.tonic().minus(Interval.MAJOR_THIRD), chord("bVI", key).root());
            assertEquals(
                    key.tonic().minus(Interval.parse("M2")), chord("bVII", key).root());
        }
    }
}
