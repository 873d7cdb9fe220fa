package monochord.view.music;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import monochord.harmony.MusicText;
import monochord.theory.Key;
import monochord.view.Look;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgressionAnswerTest {
    private static final Key C = Key.parse("C");

    private static String shown(String text) {
        return MusicAnswer.of(MusicText.read(text, C), C)
                .text(new Look(120, Look.ofPipe().signs(), false, false))
                .plain();
    }

    /** Bare letters may be meant as notes. Source: arithmetic. */
    @ParameterizedTest
    @CsvSource({"C Eb G, Cm", "C E G, C", "F A C E, Fmaj7", "E G C, C/E", "G B D F, G7"})
    void lettersThatStackInThirdsAreNamedAsOneChordToo(String letters, String chord) {
        String said = "As the notes of one chord these are " + chord + "; commas between them say so.";
        assertTrue(shown(letters).lines().anyMatch(said::equals), () -> shown(letters));
    }

    /** Where a letter has a kind behind it, where there are bars or holds, and where fourths stack up, chords are meant. */
    @ParameterizedTest
    @CsvSource({"C F G", "F C G Ab", "Am C E", "C | E | G", "C . E G", "C C E G", "C E", "I bIII V"})
    void otherRowsAreChords(String chords) {
        assertFalse(shown(chords).contains("As the notes of one chord"), () -> shown(chords));
    }
}
