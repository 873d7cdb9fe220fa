package monochord.harmony.melody;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Table;
import monochord.theory.Written;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandingTest {
    private static final String FOLDER = "/monochord/harmony/melody/";

    /** Common practice, no source: the twelve notes over eight borrowed chords; the same in all fifteen major keys. */
    @Test
    void everyNoteOverEveryBorrowedTriadInEveryKey() throws IOException {
        List<Degree> degrees = List.of("1 2 3 4 5 6 7 b2 b3 #4 b6 b7".split(" ")).stream()
                .map(Degree::parse)
                .toList();
        List<String[]> rows = Table.rows(FOLDER + "notes-over-borrowed-chords.csv");
        assertEquals(8, rows.size());
        for (String[] row : rows) {
            assertEquals(13, row.length);
            for (Key key : Key.majorKeys()) {
                Chord chord = Numeral.parse(row[0]).in(key);
                for (int i = 0; i < degrees.size(); i++) {
                    NoteName note = key.note(degrees.get(i));
                    assertEquals(
                            row[i + 1], Standing.of(note, chord).toString(), note + " over " + chord + " in " + key);
                }
            }
        }
    }

    /** Common practice, no source: which of the key's own notes are chord tones, and which colours a tune may rest on. */
    @Test
    void theKeysOwnNotesOverItsBorrowedTriads() throws IOException {
        List<String> chords = List.of("bVI", "bVII", "bIII", "iv", "iio", "v", "bII");
        List<String[]> rows = Table.rows(FOLDER + "own-notes-over-borrowed-chords.csv");
        assertEquals(15, rows.size());
        for (String[] row : rows) {
            Key key = Key.parse(row[0]);
            for (int i = 0; i < chords.size(); i++) {
                Chord chord = Numeral.parse(chords.get(i)).in(key);
                String[] halves = row[i + 1].split(" ; ");
                assertEquals(sorted(halves[0]), own(key, chord, Standing.CHORD_TONE), row[0] + " " + chord);
                assertEquals(sorted(halves[1]), own(key, chord, Standing.COLOUR), row[0] + " " + chord);
            }
        }
    }

    private static List<NoteName> sorted(String words) {
        return Written.names(words).stream()
                .sorted((a, b) -> a.fifths() - b.fifths())
                .toList();
    }

    private static List<NoteName> own(Key key, Chord chord, Standing wanted) {
        return key.scale().tones().stream()
                .filter(note -> Standing.of(note, chord) == wanted)
                .sorted((a, b) -> a.fifths() - b.fifths())
                .toList();
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "{0} over {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            F  | C      | suspension only
            F  | Csus4  | chord tone
            E  | Csus4  | clash
            E  | Csus2  | usable colour
            F  | Cm     | usable colour
            B  | C7     | clash
            Bb | Cmaj7  | clash
            Bb | C6     | clash
            A  | C7     | usable colour
            Db | C7b9   | chord tone
            G  | C7b5   | clash
            G  | Caug   | clash
            F# | C      | usable colour
            D# | Ab     | chord tone
            D  | C/D    | chord tone
            A  | G5     | usable colour
            """)
    void otherChords(String note, String chord, String standing) {
        assertEquals(
                standing, Standing.of(NoteName.parse(note), Chord.parse(chord)).toString());
    }
}
