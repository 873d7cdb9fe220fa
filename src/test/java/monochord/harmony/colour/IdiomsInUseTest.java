package monochord.harmony.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each idiom where the books put it, in four keys: among the first three ideas there, and not where it does not fit. In
 * the table, whose rows name their sources, a semicolon stands for a bar line.
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
    @CsvFileSource(resources = "idioms.csv", delimiter = '|', numLinesToSkip = 2)
    void isAmongTheFirstThree(String source, String mode, String row, String name, String put) {
        for (String key : keys(mode)) {
            List<String> first = ideas(row, key).stream()
                    .limit(FIRST)
                    .map(IdiomsInUseTest::say)
                    .toList();
            assertTrue(first.contains(name + ": " + put), () -> key + ": " + first);
        }
    }

    @Test
    void fortyOfThemAreFromABookOrASong() throws IOException {
        try (InputStream table = getClass().getResourceAsStream("idioms.csv")) {
            long rows = new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(2)
                    .filter(row -> !row.startsWith("common practice"))
                    .count();
            assertTrue(rows >= 40, () -> rows + " rows");
        }
    }

    /** Our conclusion from the same sources: the chord it leans on is not there, or the cadence would go. */
    @ParameterizedTest(name = "no {2} in {1}, {0}")
    @CsvSource(delimiter = '|', textBlock = """
            major | I V I V I           | borrowed iv
            major | I IV vi IV I        | tritone
            major | I IV V I            | walk up
            major | I ii V I            | backdoor
            major | I ii V I            | borrowed bVII
            major | I vi IV I           | passing diminished
            major | I vi ii V I         | double plagal
            major | I ii V I            | borrowed bIII
            major | I V vi V I          | walk up
            major | ii V I              | suspended
            major | I IV V I            | stepping bass
            major | I IV I              | chromatic descent
            major | I vi ii V I         | pedal on 1
            major | I vi IV I           | pedal on 5
            major | I IV I              | flat nine
            major | I vi ii vi I        | neapolitan
            major | I IV vi IV I        | borrowed viio7
            major | I vi IV V vi iii ii | common-tone diminished
            minor | i V i               | neapolitan
            minor | i iv V i VI         | borrowed I
            minor | i V i               | borrowed IV
            minor | i iv V i            | line cliche
            minor | i iv V i            | chromatic descent
            minor | i V i               | passing diminished
            """)
    void isNotOfferedWhereItDoesNotFit(String mode, String row, String name) {
        for (String key : keys(mode)) {
            List<String> names = ideas(row, key).stream()
                    .map(Idea::name)
                    .filter(name::equals)
                    .toList();
            assertEquals(List.of(), names, key);
        }
    }

    @Test
    void noDiminishedChordIsTakenForATonic() {
        for (Key key : Key.minorKeys()) {
            for (Idea idea : ideas("i iio V i iio V i", key.toString())) {
                assertTrue(
                        idea.to().stream()
                                .noneMatch(event -> event.numeral().toString().endsWith("/iio")),
                        () -> say(idea));
            }
        }
    }
}
