package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * 132 examples from textbooks and scores, each a row of numerals and notes for them: as printed, or, where a book's licence
 * does not let its notes be passed on, laid out by us. Source: the file names that of each row, and its licence.
 */
class WorkedExamplesTest {
    private static final int ROWS = 132;
    private static final int CHORDS = 722;

    /**
     * One chord of an example.
     *
     * @param label where it stands: row, place in the row from 1, numeral
     * @param excepted the property it is known to fail, or nothing
     */
    private record Sounding(String label, Key key, Numeral numeral, List<Pitch> pitches, String excepted) {
        NoteName lowest() {
            return pitches.stream().min(Comparator.naturalOrder()).orElseThrow().name();
        }

        @Override
        public String toString() {
            return label;
        }
    }

    static List<Sounding> chords() throws IOException {
        List<Sounding> chords = new ArrayList<>();
        for (String[] row : Table.rows("worked-examples.csv")) {
            chords.addAll(read(row[0], row[3], row[4], row[5]));
        }
        return chords;
    }

    private static List<Sounding> read(String row, String numerals, String notes, String exception) {
        List<Sounding> chords = new ArrayList<>();
        String[] written = numerals.split(" - ");
        String[] sounding = notes.split(" / ");
        assertEquals(written.length, sounding.length, "row " + row);
        Key key = null;
        for (int i = 0; i < written.length; i++) {
            String[] keyed = written[i].split(": ");
            key = keyed.length == 2 ? key(keyed[0]) : key;
            String numeral = keyed[keyed.length - 1];
            chords.add(new Sounding(
                    row + "." + (i + 1) + " " + numeral + " in " + key,
                    key,
                    Numeral.parse(numeral),
                    Stream.of(sounding[i].split(" ")).map(Pitch::parse).toList(),
                    exception.startsWith((i + 1) + ": ") ? exception.split(": ")[1] : ""));
        }
        return chords;
    }

    /** In these rows a capital is a major key and a small letter a minor one. */
    private static Key key(String letter) {
        NoteName tonic = NoteName.parse(letter);
        return Character.isLowerCase(letter.charAt(0)) ? Key.minor(tonic) : Key.major(tonic);
    }

    @Test
    void allExamplesAreThere() throws IOException {
        assertEquals(ROWS, Table.rows("worked-examples.csv").size());
        assertEquals(CHORDS, chords().size());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("chords")
    void eachNoteBelongsToTheChordOfTheNumeral(Sounding sounding) {
        Chord chord = sounding.numeral().in(sounding.key());
        List<NoteName> strangers = sounding.pitches().stream()
                .map(Pitch::name)
                .filter(name -> !chord.holds(name))
                .toList();
        assertEquals(sounding.excepted().equals("notes"), !strangers.isEmpty(), strangers + " in " + chord);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("chords")
    void theLowestNoteFitsTheFigure(Sounding sounding) {
        NoteName bass = sounding.numeral().in(sounding.key()).bass();
        assertEquals(sounding.excepted().equals("bass"), !bass.equals(sounding.lowest()), "bass " + bass);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("chords")
    void theNumeralOfTheChordNamesTheChord(Sounding sounding) {
        Chord chord = sounding.numeral().in(sounding.key());
        Numeral found = Numeral.of(chord, sounding.key());
        assertEquals(chord, found.in(sounding.key()), found.toString());
        assertEquals(sounding.numeral(), Numeral.parse(sounding.numeral().toString()));
    }

    /** A numeral of the key itself comes back as it was written; an applied one may come back under another name. */
    @Test
    void numeralsOfTheKeyComeBackAsTheyWereWritten() throws IOException {
        int seen = 0;
        for (Sounding sounding : chords()) {
            Chord chord = sounding.numeral().in(sounding.key());
            boolean own = chord.tones().stream().allMatch(sounding.key()::holds);
            if (own
                    && sounding.numeral().form() == Numeral.Form.DEGREE
                    && sounding.numeral().appliedTo().isEmpty()) {
                assertEquals(sounding.numeral(), Numeral.of(chord, sounding.key()), sounding.label());
                seen++;
            }
        }
        assertTrue(seen > 300, "only " + seen);
    }
}
