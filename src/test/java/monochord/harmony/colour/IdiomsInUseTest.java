package monochord.harmony.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.theory.Key;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each idiom where the books put it, in four keys: among the first three ideas there, and not where it does not fit. In the table a
 * semicolon stands for a bar line.
 */
class IdiomsInUseTest {
    private static final int FIRST = 3;

    private static List<String> keys(String mode) {
        return mode.equals("major") ? List.of("C", "A", "Eb", "F#") : List.of("Am", "F#m", "Cm", "Ebm");
    }

    private static List<Idea> ideas(String row, String key) {
        return Recolour.of(Progression.parse(row.replace(';', '|'), Key.parse(key)), Optional.empty())
                .ideas();
    }

    private static String say(Idea idea) {
        return idea.name() + ": "
                + idea.to().stream()
                        .map(ChordEvent::numeral)
                        .map(Object::toString)
                        .collect(Collectors.joining(" "));
    }

    @ParameterizedTest(name = "{3} ({4}) in {2}, {1}: {0}")
    @CsvFileSource(resources = "idioms.csv", delimiter = '|', numLinesToSkip = 1)
    void isAmongTheFirstThree(String source, String mode, String row, String name, String put) {
        for (String key : keys(mode)) {
            List<String> first =
                    ideas(row, key).stream().limit(FIRST).map(IdiomsInUseTest::say).toList();
            assertTrue(first.contains(name + ": " + put), () -> key + ": " + first);
        }
    }
}
