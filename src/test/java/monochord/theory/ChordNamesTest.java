package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChordNamesTest {
    private static List<String> names(String notes) {
        return ChordNames.of(Written.names(notes)).stream()
                .map(name -> name.chord().toString())
                .toList();
    }

    /**
     * Source: C6 and Am7/C, Integrated Music Theory, lesson 3c, CC BY-NC-SA 4.0; slash chords, Open Music Theory (2014), CC
     * BY-SA 4.0; the rest arithmetic. Which name comes first is our choice: the root in the bass.
     */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C E G     | C
            E G C     | C/E
            Ab C Eb   | Ab
            C Eb G    | Cm
            C E G A   | C6
            A C E G   | Am7
            C Eb G A  | Cm6
            F# A C D  | D7/F#
            Eb G C    | Cm/Eb
            F# A D#   | D#dim/F#
            B D F Ab  | Bdim7
            C F G     | Csus4
            F G C     | Fsus2
            C E G Bb D A | C13(no11)
            """)
    void theBestNameComesFirst(String notes, String best) {
        assertEquals(best, names(notes).get(0));
    }

    /** Source: as above; a sixth chord and a seventh chord share their notes, two suspensions too. */
    @ParameterizedTest(name = "{0} can also be {1}")
    @CsvSource({"C E G A, Am7/C", "C Eb G A, Am7b5/C", "C F G, Fsus2/C", "A C E G, C6/A"})
    void allNamesAreGiven(String notes, String other) {
        assertTrue(names(notes).contains(other), () -> names(notes).toString());
    }

    /** Source: spelling by letter, Open Music Theory (2014), "triads", CC BY-SA 4.0. */
    @ParameterizedTest(name = "{0} sounds like {1} but is not spelled so")
    @CsvSource({"C D# G, Cm", "G# C D#, G#", "Ab C D#, Ab", "B D F G#, Bdim7"})
    void aNameThatFitsOnlyTheSoundIsMarked(String notes, String sounding) {
        List<ChordNames.Name> names = ChordNames.of(Written.names(notes));
        assertTrue(names.contains(new ChordNames.Name(Chord.parse(sounding), true)), names::toString);
        assertFalse(names.contains(new ChordNames.Name(Chord.parse(sounding), false)), names::toString);
    }

    /** Each customary kind in each inversion is found again from its notes, on each root. */
    @Test
    void everyChordIsFoundFromItsNotesInEveryInversion() throws IOException {
        for (String[] row : Table.rows("chord-kinds.csv")) {
            ChordKind kind = ChordKind.parse(row[0].equals("maj") ? "" : row[0]);
            for (NoteName root : Written.names(1)) {
                for (Interval tone : kind.intervals()) {
                    Chord chord = new Chord(root, kind, root.plus(tone));
                    assertTrue(
                            ChordNames.of(chord.fromBass()).contains(new ChordNames.Name(chord, false)),
                            () -> chord + " from " + chord.fromBass());
                }
            }
        }
    }

    /** A name not marked as one by sound holds just the notes given. */
    @Test
    void everySpelledNameHasTheNotesGiven() {
        List<NoteName> line = Written.names("Gb Db Ab Eb Bb F C G D A E B F# C# G#");
        for (NoteName one : line) {
            for (NoteName two : line) {
                for (NoteName three : line) {
                    List<NoteName> notes = List.of(NoteName.C, one, two, three);
                    for (ChordNames.Name name : ChordNames.of(notes)) {
                        assertEquals(
                                NoteName.C.pitchClass(), name.chord().bass().pitchClass());
                        assertEquals(name.bySound(), !new HashSet<>(name.chord().tones()).equals(new HashSet<>(notes)));
                    }
                }
            }
        }
    }

    @Test
    void noNotesHaveNoName() {
        assertTrue(ChordNames.of(List.of()).isEmpty());
        assertTrue(ChordNames.of(Written.names("C C# D D#")).isEmpty());
    }
}
