package monochord.harmony.voicing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import monochord.theory.Chord;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** None is left out, and none is in that should not be. */
class CandidatesTest {
    private static final Key C = Key.parse("C");
    /** By half steps, the lowest lower key of an interval; low interval limits as music shops print them, a trade rule. */
    private static final int[] LOWEST = {0, 52, 51, 48, 47, 45, 35, 37, 41, 41, 41, 41};

    /**
     * Every four keys, bass from C2 to E3 and three more from E3 to G5 within an octave, with what must sound, and nothing
     * doubled but what may be: keys of one octave, C = 0.
     */
    private static Set<String> everyFour(int bass, Set<Integer> tones, Set<Integer> must, Set<Integer> doubles) {
        Set<String> found = new TreeSet<>();
        for (int b = 36; b <= 52; b++) {
            for (int lower = Math.max(52, b + 1); lower <= 79; lower++) {
                for (int middle = lower + 1; middle <= 79; middle++) {
                    for (int upper = middle + 1; upper <= Math.min(79, lower + 12); upper++) {
                        int[] keys = {b, lower, middle, upper};
                        if (b % 12 == bass && keeps(keys, tones, must, doubles)) {
                            found.add(Arrays.toString(keys));
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean keeps(int[] keys, Set<Integer> tones, Set<Integer> must, Set<Integer> doubles) {
        List<Integer> seen = new ArrayList<>();
        for (int i = 0; i < keys.length; i++) {
            int tone = keys[i] % 12;
            if (!tones.contains(tone) || seen.contains(tone) && !doubles.contains(tone)) {
                return false;
            }
            seen.add(tone);
            for (int j = 0; j < i; j++) {
                int interval = keys[i] - keys[j];
                if (interval < 12 && keys[j] < LOWEST[interval]) {
                    return false;
                }
            }
        }
        return seen.containsAll(must);
    }

    private static Set<Integer> set(String numbers) {
        Set<Integer> set = new TreeSet<>();
        Arrays.stream(numbers.split(" ")).map(Integer::valueOf).forEach(set::add);
        return set;
    }

    /** Tones, what must sound and what may be doubled in C major, by hand. */
    @ParameterizedTest(name = "{0}: all candidates in close style")
    @CsvSource(delimiter = '|', textBlock = """
            C      | 0  | 0 4 7     | 0 4      | 0 4 7
            G      | 7  | 7 11 2    | 7 11     | 7 2
            G7     | 7  | 7 11 2 5  | 7 11 5   | 7 2
            Gsus4  | 7  | 7 0 2     | 7 0      | 7 2
            Ab     | 8  | 8 0 3     | 8 0      | 8 0 3
            Abmaj7 | 8  | 8 0 3 7   | 8 0 7    | 8 0 3
            C/E    | 4  | 0 4 7     | 0 4      | 0 4 7
            Bdim   | 11 | 11 2 5    | 11 2 5   | 2
            C/D    | 2  | 0 4 7 2   | 0 4 2    | 0 4 7
            """)
    void allAreFound(String chord, int bass, String tones, String must, String doubles) {
        VoicingTask task = VoicingTask.of(List.of(Chord.parse(chord)), C, VoicingStyle.CLOSE);
        Set<String> found = new TreeSet<>();
        Candidates.of(task, 0, 4).forEach(keys -> found.add(Arrays.toString(keys)));
        assertTrue(!found.isEmpty(), found::toString);
        assertEquals(everyFour(bass, set(tones), set(must), set(doubles)), found);
    }

    @Test
    @DisplayName("every candidate of every style keeps the rules that a learner's voicing is held to")
    void everyCandidateKeepsTheRules() {
        for (VoicingStyle style : List.of(VoicingStyle.CLOSE, VoicingStyle.SPREAD, VoicingStyle.CHOIR)) {
            for (String text : List.of("C", "G7", "Gsus4", "Abmaj7", "Ab", "Fm", "Db", "C/E", "Bm7b5", "D7")) {
                Chord chord = Chord.parse(text);
                VoicingTask task = VoicingTask.of(List.of(chord), C, style);
                for (VoicedProgression way : VoicingSearch.best(task, 200)) {
                    Voicing voicing = way.voicings().get(0);
                    assertEquals(
                            List.of(), VoicingRules.broken(voicing, chord, C, Reach.OCTAVE), text + " as " + voicing);
                }
            }
        }
    }
}
