package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import monochord.harmony.Music.Notes;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which reading a line of music gets. The readings are the project's own rules; common practice, no source. */
class MusicTextTest {
    @ParameterizedTest(name = "in {0}, \"{1}\" is {2} {3}")
    @CsvSource(delimiter = '|', textBlock = """
            D  | scale               | scale       | D major
            Dm | scale               | scale       | D minor
            D  | Scale               | scale       | D major
            D  | harmonic minor      | scale       | D harmonic minor
            D  | mixolydian          | scale       | D mixolydian
            D  | dorian scale        | scale       | D dorian
            D  | E harmonic minor    | scale       | E harmonic minor
            C  | A minor             | scale       | A minor
            C  | Eb scale            | scale       | Eb major
            C  | Eb minor scale      | scale       | Eb minor
            D  | bVI                 | chord       | Bb
            D  | vi                  | chord       | Bm
            D  | 6-                  | chord       | Bm
            D  | 4                   | chord       | G
            C  | Abmaj7              | chord       | Abmaj7
            C  | ' Abmaj7 '          | chord       | Abmaj7
            C  | C4                  | chord       | Csus4
            C  | A                   | chord       | A
            C  | C-7                 | chord       | Cm7
            D  | IV I V bVI          | progression | G D A Bb
            D  | 4 1 5 b6 5 1        | progression | G D A Bb A D
            C  | F C G Ab            | progression | F C G Ab
            C  | C F7 G              | progression | C F7 G
            C  | C7 F7               | progression | C7 F7
            C  | C - F - G           | progression | C F G
            C  | F . C               | progression | F . C
            C  | C4 E4 G4            | notes       | C4 E4 G4
            C  | F3 A3 C4            | notes       | F3 A3 C4
            C  | F2 A3               | notes       | F2 A3
            C  | C3                  | notes       | C3
            C  | C-E-G               | notes       | C E G
            C  | 'C, E, G'           | notes       | C E G
            C  | 'b♭, d, f'          | notes       | Bb D F
            C  | notes C E G         | notes       | C E G
            C  | notes C7 E7         | notes       | C7 E7
            C  | notes Ab            | notes       | Ab
            """)
    void readsALineOfMusic(String key, String text, String kind, String what) {
        assertEquals(kind + " " + what, described(MusicText.read(text, Key.parse(key))));
    }

    @Test
    void keepsBarLines() {
        assertEquals("progression F C | G |", described(MusicText.read("F C | G", Key.parse("C"))));
        assertEquals("progression C | F |", described(MusicText.read("C |F", Key.parse("C"))));
        assertEquals("progression F |", described(MusicText.read("F |", Key.parse("C"))));
    }

    private static String described(Music music) {
        if (music instanceof Music.OneChord one) {
            return "chord " + one.chord();
        }
        if (music instanceof Music.OneScale one) {
            return "scale " + one.scale();
        }
        if (music instanceof Music.OneProgression one) {
            return "progression " + one.progression();
        }
        Notes notes = (Notes) music;
        var shown = notes.pitches().isEmpty() ? notes.names() : notes.pitches();
        return "notes " + String.join(" ", shown.stream().map(Object::toString).toList());
    }

    @ParameterizedTest(name = "\"{0}\" fails at {1}")
    @CsvSource(delimiter = '|', textBlock = """
            IV I bVX     |  7 | "bVX" is not a numeral: expected o, ø, +, a figure (6, 64, 7 …), a suffix (maj7, sus4 …), / at character 3, found 'X'. Example: bVImaj7
            notes C4 E   |  9 | "notes C4 E" is not a row of notes: either every note has an octave or none has. Example: notes C4 E4 G4
            notes        |  5 | "notes" is not a row of notes: a note is missing behind the word. Example: notes C4 E4 G4
            notes C H    |  8 | "H" is not a note name: expected a letter from A to G at character 1, found 'H'. Example: Eb
            ''           |  0 | '"" is not a progression: expected a chord at character 1, found the end. Example: IV I | V . bVI | V I'
            """)
    void saysWhereALineFails(String text, int place, String message) {
        Unreadable refusal = assertThrows(Unreadable.class, () -> MusicText.read(text, Key.parse("C")));
        assertEquals(message, refusal.getMessage());
        assertEquals(place, refusal.place());
    }

    @Test
    void readsOrRefusesWhateverIsTyped() {
        String[] bits = {"C", "4", "b", "VI", "-", ",", " ", "notes ", "scale", "m", "7", "|", ".", "%", "/", "é", "x"};
        Random random = new Random(20261);
        int read = 0;
        for (int i = 0; i < 100_000; i++) {
            StringBuilder text = new StringBuilder();
            random.ints(random.nextInt(8), 0, bits.length).forEach(bit -> text.append(bits[bit]));
            read += reads(text.toString()) ? 1 : 0;
        }
        assertTrue(read > 1000 && read < 99_000, "both happen: " + read);
    }

    private static boolean reads(String text) {
        try {
            MusicText.read(text, Key.parse("Cb"));
            return true;
        } catch (Unreadable refusal) {
            assertTrue(refusal.place() >= 0 && refusal.place() <= text.length(), text);
            return false;
        }
    }
}
