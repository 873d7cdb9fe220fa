package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How near chords lie to each other. */
class VoiceLeadingTest {
    private static final List<Chord> CHORDS = chords();

    private static List<Chord> chords() {
        List<Chord> chords = new ArrayList<>();
        for (String kind : List.of("", "m", "dim", "aug", "sus4", "7", "maj7", "m7b5", "9")) {
            IntStream.range(-5, 7)
                    .mapToObj(fifths -> new Chord(NoteName.at(fifths), ChordKind.parse(kind)))
                    .forEach(chords::add);
        }
        return chords;
    }

    /**
     * Source: Integrated Music Theory (open university course text), lesson 19b, for the first eleven and the three roots
     * by fifths; the others worked out by hand over all six ways to join three tones.
     */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | Em   | 1
            C  | Am   | 2
            C  | Ab   | 2
            C  | Fm   | 2
            C  | E    | 2
            C  | F    | 3
            C  | G    | 3
            C  | Eb   | 3
            C  | A    | 3
            C  | Abm  | 3
            C  | Ebm  | 4
            C  | Bb   | 6
            C  | Dm   | 5
            C  | Bdim | 5
            C  | Ddim | 4
            Dm | G    | 4
            Am | Dm   | 3
            G  | C    | 3
            """)
    void triadsLieSoFarApart(String from, String to, int halfSteps) {
        assertEquals(halfSteps, VoiceLeading.halfSteps(Chord.parse(from), Chord.parse(to)));
    }

    /**
     * Source: worked by hand: each tone of the fuller chord goes to some tone of the thinner, and none of those is left
     * out.
     */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C      | Cmaj7  | 1
            C      | C7     | 2
            G7     | C      | 4
            Gsus4  | Abmaj7 | 2
            Abmaj7 | Fm7    | 2
            C      | C/Bb   | 0
            """)
    void chordsOfDifferentFullness(String from, String to, int halfSteps) {
        assertEquals(halfSteps, VoiceLeading.halfSteps(Chord.parse(from), Chord.parse(to)));
    }

    @Test
    @DisplayName("there and back is as far, a chord is no way from itself, and moving both changes nothing")
    void lawsOfDistance() {
        for (Chord one : CHORDS) {
            assertEquals(0, VoiceLeading.halfSteps(one, one));
            for (Chord other : CHORDS) {
                int there = VoiceLeading.halfSteps(one, other);
                assertEquals(there, VoiceLeading.halfSteps(other, one), () -> one + " " + other);
                var third = one.root().to(other.root());
                assertEquals(
                        there, VoiceLeading.halfSteps(one.plus(third), other.plus(third)), () -> one + " " + other);
            }
        }
    }

    @Test
    @DisplayName("for triads the least is the least of the six ways to join them")
    void bruteForce() {
        int[][] ways = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};
        List<Chord> triads = CHORDS.stream().filter(c -> c.tones().size() == 3).toList();
        for (Chord one : triads) {
            for (Chord other : triads) {
                int least = 99;
                for (int[] way : ways) {
                    int sum = 0;
                    for (int i = 0; i < 3; i++) {
                        int up = Math.floorMod(
                                other.tones().get(way[i]).pitchClass()
                                        - one.tones().get(i).pitchClass(),
                                12);
                        sum += Math.min(up, 12 - up);
                    }
                    least = Math.min(least, sum);
                }
                assertEquals(least, VoiceLeading.halfSteps(one, other), () -> one + " " + other);
            }
        }
    }

    @Test
    @DisplayName("a chord has a note, and no more than twelve")
    void bounds() {
        List<NoteName> c = List.of(NoteName.C);
        assertThrows(IllegalArgumentException.class, () -> VoiceLeading.halfStepsOfNames(c, List.of()));
        List<NoteName> many = IntStream.range(0, 13).mapToObj(NoteName::at).toList();
        assertThrows(IllegalArgumentException.class, () -> VoiceLeading.halfStepsOfNames(c, many));
        assertEquals(36, VoiceLeading.halfStepsOfNames(c, many.subList(0, 12)));
    }

    /** Source: worked by hand, octaves and all. */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C4 E4 G4    | C4 F4 A4    | 3
            C4 E4 G4    | B3 D4 G4    | 3
            C4 E4 G4 B4 | C4 E4 G4    | 4
            C4 E4 G4    | C5 E5 G5    | 36
            C4          | A3 C4 E4    | 7
            """)
    void keysLieSoFarApart(String from, String to, int halfSteps) {
        assertEquals(halfSteps, VoiceLeading.halfSteps(pitches(from), pitches(to)));
        assertEquals(halfSteps, VoiceLeading.halfSteps(pitches(to), pitches(from)));
    }

    private static List<Pitch> pitches(String text) {
        return Stream.of(text.split(" ")).map(Pitch::parse).toList();
    }

    @Test
    @DisplayName(
            "as many keys on either side are joined in order, and an octave apart is never nearer than octaves open")
    void keysInOrder() {
        for (Chord one : CHORDS) {
            for (Chord other : CHORDS) {
                List<Pitch> from = above("C4", one);
                List<Pitch> to = above("C4", other);
                int keys = VoiceLeading.halfSteps(from, to);
                assertTrue(keys >= VoiceLeading.halfSteps(one, other), () -> one + " " + other);
                if (from.size() == to.size()) {
                    int inOrder = IntStream.range(0, from.size())
                            .map(i -> Math.abs(
                                    from.get(i).midiNumber() - to.get(i).midiNumber()))
                            .sum();
                    assertEquals(inOrder, keys, () -> from + " " + to);
                }
            }
        }
    }

    private static List<Pitch> above(String lowest, Chord chord) {
        Pitch bottom = Pitch.parse(lowest);
        return chord.tones().stream()
                .map(tone -> Pitch.atOrAbove(tone, bottom))
                .sorted(Comparator.comparingInt(Pitch::midiNumber))
                .toList();
    }

    @Test
    void findsWhatBothHold() {
        assertEquals(
                "[C, E]",
                VoiceLeading.commonTones(Chord.parse("C"), Chord.parse("Am")).toString());
        assertEquals(
                "[G#]",
                VoiceLeading.commonTones(Chord.parse("E"), Chord.parse("Db")).toString());
        assertEquals(
                "[]",
                VoiceLeading.commonTones(Chord.parse("C"), Chord.parse("Dm")).toString());
    }
}
