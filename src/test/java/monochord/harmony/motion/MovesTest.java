package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How near chords lie to each other. */
class MovesTest {
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
        assertEquals(halfSteps, Moves.least(Chord.parse(from), Chord.parse(to)));
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
        assertEquals(halfSteps, Moves.least(Chord.parse(from), Chord.parse(to)));
    }

    @Test
    @DisplayName("there and back is as far, a chord is no way from itself, and moving both changes nothing")
    void lawsOfDistance() {
        for (Chord one : CHORDS) {
            assertEquals(0, Moves.least(one, one));
            for (Chord other : CHORDS) {
                int there = Moves.least(one, other);
                assertEquals(there, Moves.least(other, one), () -> one + " " + other);
                var third = one.root().to(other.root());
                assertEquals(there, Moves.least(one.plus(third), other.plus(third)), () -> one + " " + other);
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
                assertEquals(least, Moves.least(one, other), () -> one + " " + other);
            }
        }
    }

    @Test
    @DisplayName("a chord has a note, and no more than twelve")
    void bounds() {
        List<NoteName> c = List.of(NoteName.C);
        assertThrows(IllegalArgumentException.class, () -> Moves.least(c, List.of()));
        List<NoteName> many = IntStream.range(0, 13).mapToObj(NoteName::at).toList();
        assertThrows(IllegalArgumentException.class, () -> Moves.least(c, many));
        assertEquals(36, Moves.least(c, many.subList(0, 12)));
    }
}
