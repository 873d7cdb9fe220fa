package monochord.harmony.voicing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.harmony.voicing.cost.CandidateTable;
import monochord.harmony.voicing.cost.CostFormula;
import monochord.harmony.voicing.cost.TransitionCost;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The search gives what trying everything gives. */
class VoicingSearchTest {
    private static final Key C = Key.parse("C");
    private static final List<String> NUMERALS = List.of("I", "IV", "V7", "bVI", "Vsus4");
    private static final int KEPT = 5;

    /** Every row of candidates, weighed in the plain way, cheapest first. */
    private static List<Integer> everything(VoicingTask task, int voices) {
        List<List<int[]>> candidates = new ArrayList<>();
        for (int i = 0; i < task.chords().size(); i++) {
            candidates.add(Candidates.of(task, i, voices));
        }
        List<Integer> costs = new ArrayList<>();
        tryAll(task.formula(voices), candidates, new ArrayList<>(), costs);
        return costs.stream().sorted().limit(KEPT).toList();
    }

    private static void tryAll(
            CostFormula weighing, List<List<int[]>> candidates, List<int[]> row, List<Integer> costs) {
        if (row.size() == candidates.size()) {
            costs.add(weighing.whole(row).total());
            return;
        }
        for (int[] candidate : candidates.get(row.size())) {
            row.add(candidate);
            tryAll(weighing, candidates, row, costs);
            row.remove(row.size() - 1);
        }
    }

    private static List<Chord> chords(String... numerals) {
        return Stream.of(numerals)
                .map(Numeral::parse)
                .map(numeral -> numeral.in(C))
                .toList();
    }

    private static void assertExact(VoicingTask task) {
        List<VoicedProgression> ways = VoicingSearch.best(task, KEPT);
        int voices = ways.get(0).voicings().get(0).pitches().size();
        assertEquals(
                everything(task, voices),
                ways.stream().map(way -> way.cost().total()).toList(),
                () -> task.style() + " " + task.chords());
    }

    @ParameterizedTest(name = "every two chords, {0}: the five cheapest ways are found")
    @EnumSource(VoicingStyle.class)
    void everyTwoChords(VoicingStyle style) {
        for (String first : NUMERALS) {
            for (String second : NUMERALS) {
                assertExact(VoicingTask.of(chords(first, second), C, style));
            }
        }
    }

    @ParameterizedTest(name = "two chords of five notes, {0}: the five cheapest ways are found")
    @EnumSource(
            value = VoicingStyle.class,
            names = {"CLOSE", "SPREAD", "ALONE", "WITH_BASS", "UNDER_TUNE"})
    void fiveNotes(VoicingStyle style) {
        for (String second : List.of("V7", "bVI")) {
            assertExact(VoicingTask.of(chords("I", second), C, style).ofVoices(5));
        }
    }

    @Test
    @DisplayName("altered dominants: the five cheapest ways are found")
    void alteredDominants() {
        for (VoicingStyle style : VoicingStyle.values()) {
            assertExact(VoicingTask.of(List.of(Chord.parse("G7alt"), Chord.parse("Cmaj7")), C, style));
        }
    }

    @ParameterizedTest(name = "three chords, {0}, in small hands: the five cheapest ways are found")
    @EnumSource(VoicingStyle.class)
    void threeChords(VoicingStyle style) {
        Reach small = new Reach(
                switch (style) {
                    case SPREAD, ALONE, UNDER_TUNE -> 8;
                    case CHOIR, WITH_BASS, DROP_TWO -> 7;
                    default -> 6;
                });
        List<String> few = NUMERALS.subList(style == VoicingStyle.CLOSE ? 2 : 1, NUMERALS.size());
        for (String first : few) {
            for (String second : few) {
                for (String third : Thorough.spread(few, 1, few.indexOf(first) + few.indexOf(second))) {
                    assertExact(VoicingTask.of(chords(first, second, third), C, style)
                            .within(small));
                }
            }
        }
    }

    @ParameterizedTest(name = "the quick sum of a change is the plain one, {0}")
    @EnumSource(VoicingStyle.class)
    void theQuickSumIsThePlainOne(VoicingStyle style) {
        List<Chord> chords = chords("I", "V7", "viio", "bVImaj7", "ii7", "V7/ii", "bII", "iv", "Vsus4", "viio7");
        int compared = 0;
        for (Chord from : chords) {
            for (Chord to : chords) {
                compared += compare(VoicingTask.of(List.of(from, to), C, style).within(new Reach(10)));
            }
        }
        assertTrue(compared > 2000, "only " + compared);
    }

    private static int compare(VoicingTask task) {
        int voices = VoicingSearch.best(task).voicings().get(0).pitches().size();
        Layout layout = new Layout(task.style(), voices, task.reach());
        CostFormula weighing = task.formula(voices);
        CandidateTable from = new CandidateTable(
                Candidates.of(task, 0, voices), voices, task.tones(0, voices), weighing, layout::drift);
        CandidateTable to = new CandidateTable(
                Candidates.of(task, 1, voices), voices, task.tones(1, voices), weighing, layout::drift);
        TransitionCost crossing = new TransitionCost(from, to, weighing);
        for (int a = 0; a < from.size(); a++) {
            for (int b = 0; b < to.size(); b++) {
                int plain = weighing.change(0, from.keys(a), to.keys(b)).total();
                if (plain != crossing.cost(a, b)) {
                    assertEquals(plain, crossing.cost(a, b), task.chords() + " " + a + " " + b);
                }
            }
        }
        return from.size() * to.size();
    }

    @Test
    @DisplayName("what a way is said to cost is what its voicings cost")
    void aWayCostsWhatItsVoicingsCost() {
        for (VoicingStyle style : VoicingStyle.values()) {
            for (VoicedProgression way :
                    VoicingSearch.best(VoicingTask.of(chords("IV", "I", "V7", "bVI", "V", "I"), C, style), 3)) {
                assertEquals(way.task().cost(way.voicings()), way.cost());
            }
        }
    }

    @Test
    @DisplayName("the ways are all different, the cheapest first")
    void theWaysAreDifferent() {
        List<VoicedProgression> ways =
                VoicingSearch.best(VoicingTask.of(chords("I", "V7", "I"), C, VoicingStyle.CLOSE), 20);
        assertEquals(
                20, ways.stream().map(VoicedProgression::voicings).distinct().count());
        List<Integer> costs = ways.stream().map(way -> way.cost().total()).toList();
        assertEquals(costs.stream().sorted().toList(), costs);
    }

    @Test
    @DisplayName("one chord that is too full for a style is named")
    void aChordTooFullIsNamed() {
        VoicingTask task = VoicingTask.of(List.of(Chord.parse("C"), Chord.parse("C13b9")), C, VoicingStyle.CHOIR);
        Unvoiced unvoiced = assertThrows(Unvoiced.class, () -> VoicingSearch.best(task));
        assertEquals("C13b9 has no choir voicing within an octave", unvoiced.getMessage());
        assertEquals(1, unvoiced.index());
        assertThrows(IllegalArgumentException.class, () -> VoicingSearch.best(task, 0));
    }

    @Test
    @DisplayName("a style has room for so many voices and no more")
    void tooManyVoicesAreRefused() {
        VoicingTask task = VoicingTask.of(List.of(Chord.parse("C")), C, VoicingStyle.CHOIR);
        assertEquals(
                "a task in this style, choir, needs from 4 to 4 voices, not 5",
                assertThrows(IllegalArgumentException.class, () -> task.ofVoices(5))
                        .getMessage());
    }

    /** Nothing fits under so low a top. Common practice, no source. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            close      | G7 has no close voicing within an octave with C3 on top
            spread     | G7 has no spread voicing within an octave with C3 on top
            shell      | G7 has no shell voicing within an octave with C3 on top
            choir      | G7 has no choir voicing within an octave with C3 on top
            alone      | G7 has no voicing alone within an octave with C3 on top
            with bass  | G7 has no voicing with a bass player within an octave with C3 on top
            under tune | G7 has no voicing under a tune within an octave with C3 on top
            drop two   | G7 has no drop two voicing within an octave with C3 on top
            """)
    void whatCannotBePlayedIsSaid(String style, String said) {
        VoicingTask task = VoicingTask.of(
                        List.of(Chord.parse("G7")), C, VoicingStyle.find(style).orElseThrow())
                .under(List.of(Optional.of(Pitch.parse("C3"))));
        assertEquals(
                said,
                assertThrows(Unvoiced.class, () -> VoicingSearch.best(task)).getMessage());
    }
}
