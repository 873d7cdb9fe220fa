package monochord.harmony.voicing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Another way is heard as another way, and what is said of it holds. Which ways count as others is our own. */
class AlternativeVoicingTest {
    private static final List<String> ROWS = List.of("I V vi IV", "ii7 V7 Imaj7", "I bVII IV iv I", "i VI III VII i");

    private static VoicedProgression best(String row, String key, VoicingStyle style) {
        return VoicingSearch.best(VoicingTask.of(Progression.parse(row, Key.parse(key)), style));
    }

    private static Stream<VoicedProgression> everyBest(VoicingStyle style) {
        return Stream.of("C", "Eb", "A", "F#").flatMap(key -> ROWS.stream().map(row -> best(row, key, style)));
    }

    @ParameterizedTest(name = "{0}: another top is another tone, and stays apart for half of the row")
    @EnumSource(VoicingStyle.class)
    void anotherTopIsHeard(VoicingStyle style) {
        everyBest(style)
                .forEach(best -> AlternativeVoicing.than(best).stream()
                        .map(AlternativeVoicing::way)
                        .filter(way -> way.task().style() == style)
                        .forEach(way -> {
                            assertNotEquals(top(best), top(way));
                            long apart = IntStream.range(0, way.voicings().size())
                                    .filter(i -> !way.voicings()
                                            .get(i)
                                            .top()
                                            .soundsLike(best.voicings().get(i).top()))
                                    .count();
                            assertTrue(2 * apart >= way.voicings().size(), way::toString);
                        }));
    }

    private static NoteName top(VoicedProgression way) {
        return way.voicings().get(0).top().name();
    }

    /** Common practice, no source; which ways count as others is our own. */
    @ParameterizedTest(name = "{0} in {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            ii7 V7 Imaj7 | C  | close     | it begins with the seventh of Dm7 on top, it begins with the fifth of Dm7 on top, it is opened out; with two notes in the left hand, it leaves roots to a bass player
            I V vi IV    | D  | spread    | it begins with the root of D on top, it begins with the fifth of D on top, it is closed up; with the bass alone in the left hand
            ii7 V7 Imaj7 | C  | shell     | it is opened out; with two notes in the left hand, it leaves roots to a bass player
            ii7 V7 Imaj7 | C  | drop two  | it begins with the third of Dm7 on top, it begins with the fifth of Dm7 on top, it has the bass; where nobody else plays it
            ii7 V7 Imaj7 | C  | under tune |
            """)
    void whatDiffersIsNamed(String row, String key, String style, String differs) {
        List<String> wanted = differs == null
                ? List.of()
                : Stream.of(differs.split(", "))
                        .map(one -> one.replace(';', ','))
                        .toList();
        VoicedProgression best = best(row, key, VoicingStyle.find(style).orElseThrow());
        assertEquals(
                wanted,
                AlternativeVoicing.than(best).stream()
                        .map(way -> way.differs().toString())
                        .toList());
    }

    @Test
    @DisplayName("one chord alone has no other tops")
    void oneChordHasNoOtherTops() {
        assertEquals(
                List.of("it is opened out, with two notes in the left hand"),
                AlternativeVoicing.than(best("I", "C", VoicingStyle.CLOSE)).stream()
                        .map(way -> way.differs().toString())
                        .toList());
    }
}
