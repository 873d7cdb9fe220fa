package monochord.harmony;

import java.util.List;
import monochord.Thorough;
import monochord.theory.Driver;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A progression is driven as each parser of theory is: all short texts, longer damaged ones, long lines. */
@Tag("attack")
class DrivenProgressionTest {
    private static final long SEED = 20260102;
    private static final Key KEY = Key.parse("Eb major");

    /** Symbols come back as they are written; which numeral a chord was first read from is not kept in them. */
    private static final Driver<String> PROGRESSIONS = new Driver<>(
            text -> Progression.parse(text, KEY).toString(),
            List.of("C", "b", "6", "IV", "V/", "m7", " ", ".", "%", "|", "(", ")", "\u0000"),
            List.of("IV I | V . bVI | V I |", "F C G Ab G C", "4 1 5 b6 5 1", "Cm7(b5, add11) | % | . F |"),
            symbols -> Progression.parse(symbols, KEY).numerals(Signs.ASCII));

    @Test
    void allShortTextsAreReadOrRefused() {
        PROGRESSIONS.driveAllUpTo(Thorough.times(3, 4));
    }

    @Test
    void longerTextsAreReadOrRefused() {
        PROGRESSIONS.driveAtRandom(Thorough.times(5_000, 20_000), SEED);
    }

    @Test
    void longLinesAreReadOrRefusedInDueTime() {
        PROGRESSIONS.driveWithLongLines();
    }
}
