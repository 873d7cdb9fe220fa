package monochord.harmony.melody;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables were worked out by hand from the rule of thumb; common practice, no source. */
class StandingInKeyTest {
    private static final List<String> NOTES = List.of("C", "D", "E", "F", "G", "A", "B", "Db", "Eb", "F#", "Ab", "Bb");

    private static String letter(Standing tension) {
        return switch (tension) {
            case CHORD_TONE -> "o";
            case COLOUR -> "+";
            case TENSE -> "t";
            case SUSPENSION_ONLY -> "s";
            case CLASH -> "x";
        };
    }

    /** o a chord tone, + a colour, t tense, s a suspension, x a clash; over C D E F G A B D♭ E♭ F♯ A♭ B♭. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Ab   | o + x + + x x s o + o +
            Bb   | + o + o + + x x s x + o
            Eb   | + + x + o + x + o x s o
            Fm   | o + t o + x x x + x o +
            Ddim | + o t o + x + x x x o +
            Gm   | + o + + o + x x x t x o
            Db   | + x x o + x + o + s o +
            Cm   | o + x + o + t x o x x +
            """)
    void overTheBorrowedChordsOfC(String symbol, String letters) {
        Chord chord = Chord.parse(symbol);
        List<String> found = NOTES.stream()
                .map(note -> letter(Standing.of(NoteName.parse(note), chord)))
                .toList();
        assertEquals(letters, String.join(" ", found));
    }

    /** Chord tones, then colours, of the notes of the key. */
    @ParameterizedTest(name = "{1} in {0}: {2}; {3}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | bVI  | C     | D F G
            G  | bVI  | G     | A C D
            D  | bVI  | D     | E G A
            Eb | bVI  | Eb    | F Ab Bb
            Gb | bVI  | Gb    | Ab Cb Db
            C# | bVI  | C#    | D# F# G#
            C  | bVII | D F   | C E G A
            A  | bVII | B D   | A C# E F#
            Db | bVII | Eb Gb | Db F Ab Bb
            C  | bIII | G     | C D F A
            F  | bIII | C     | F G Bb D
            C  | iv   | C F   | D G
            B  | iv   | B E   | C# F#
            C  | iio  | D F   | C G B
            Bb | iio  | C Eb  | Bb F A
            """)
    void ofTheNotesOfTheKey(String tonic, String numeral, String rests, String colours) {
        Key key = Key.parse(tonic);
        Chord chord = Numeral.parse(numeral).in(key);
        assertEquals(rests, notes(chord, key, Standing.CHORD_TONE));
        assertEquals(colours, notes(chord, key, Standing.COLOUR));
    }

    private static String notes(Chord chord, Key key, Standing tension) {
        List<Degree> degrees = Standing.degrees(chord, key, tension);
        return String.join(
                " ", degrees.stream().map(degree -> key.note(degree).toString()).toList());
    }

    /** Source: the reading of the table: a natural 3, 6 or 7 in the tune on a strong beat. */
    @ParameterizedTest(name = "{0} fights {1}")
    @CsvSource({"bVI, 3 6 7", "bVII, 7", "bIII, 3 7", "iv, 6 7", "iio, 6", "v, 7", "bII, 2 3 6", "i, 3"})
    void fightsTheSameDegreesInEveryKey(String numeral, String degrees) {
        for (Key key : Key.majorKeys()) {
            Chord chord = Numeral.parse(numeral).in(key);
            assertEquals(
                    degrees,
                    String.join(
                            " ",
                            Standing.degrees(chord, key, Standing.CLASH).stream()
                                    .map(Degree::toString)
                                    .toList()));
        }
    }

    @ParameterizedTest
    @CsvSource({"Cmaj7, B", "C7, Bb", "Abmaj7, G", "G7sus4, C", "Dm7b5, C"})
    void aToneOfTheChordAlwaysRests(String symbol, String note) {
        Stream.concat(Stream.of(NoteName.parse(note)), Chord.parse(symbol).tones().stream())
                .forEach(tone -> assertEquals(Standing.CHORD_TONE, Standing.of(tone, Chord.parse(symbol))));
    }
}
