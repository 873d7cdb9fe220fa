package monochord.course.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import monochord.text.Phrase;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/** Where a teacher would lead: three evenings, and the ways out of each. Figures are common practice, no source. */
class RehearsalStateTest {
    private static final RehearsalGoal GOAL = new RehearsalGoal(8, 1, 100, List.of(Key.parse("C"), Key.parse("F")));

    /** A round as {@code bars 1-8 at 70 in C}. */
    private static String told(Round round) {
        return (round.first() + 1) + "-" + (round.last() + 1) + " at " + round.tempo() + " in "
                + round.key().tonic();
    }

    /** Rounds one after the other until it is over, or so many. */
    private static List<String> evening(Function<Round, RoundResult> player, int most) {
        List<String> rounds = new ArrayList<>();
        RehearsalState state = RehearsalState.begin(GOAL);
        while (!state.isOver() && rounds.size() < most) {
            rounds.add(told(state.round()));
            state = state.after(player.apply(state.round()));
        }
        rounds.add(state.lead() + " | " + state.tomorrow());
        return rounds;
    }

    private static RoundResult late(int bar) {
        return new RoundResult(List.of(bar), false, 0, Phrase.sentence("Late."));
    }

    @Test
    void aCleanEveningGoesOnALittleQuickerAndThenInTheNextKey() {
        assertEquals(
                List.of(
                        "1-8 at 70 in C",
                        "1-8 at 74 in C",
                        "1-8 at 79 in C",
                        "1-8 at 83 in C",
                        "1-8 at 88 in C",
                        "1-8 at 94 in C",
                        "1-8 at 99 in C",
                        "1-8 at 100 in C",
                        "1-8 at 100 in C",
                        "1-8 at 80 in F",
                        "1-8 at 85 in F",
                        "1-8 at 90 in F",
                        "1-8 at 95 in F",
                        "1-8 at 100 in F",
                        "1-8 at 100 in F",
                        "It stands in F major. | Tomorrow: once through in C major at 100, to see whether it still"
                                + " stands, before anything new."),
                evening(round -> RoundResult.clean(), 100));
    }

    /** Whoever plays dead on the beat is led on sooner than who just manages. */
    @Test
    void thePaceFollowsThePlaying() {
        int steady = evening(round -> new RoundResult(List.of(), false, 1, Phrase.NOTHING), 100)
                .size();
        int just = evening(round -> new RoundResult(List.of(), false, 0, Phrase.NOTHING), 100)
                .size();
        assertTrue(steady < just, steady + " rounds, and " + just);
    }

    /** Bar 5 is late whatever is done: alone and slower, again, put aside, and enough for today. */
    @Test
    void anEveningOnWhichOneBarIsAlwaysLate() {
        assertEquals(
                List.of(
                        "1-8 at 70 in C",
                        "4-5 at 60 in C",
                        "4-5 at 52 in C",
                        "4-5 at 46 in C",
                        "4-5 at 41 in C",
                        "1-8 at 60 in C",
                        "Late. That is enough of bars 4 and 5 for today. | Tomorrow: first bars 4 and 5 in C major, each"
                                + " hand alone, then both at 40."),
                evening(round -> late(4 - round.first()), 100));
    }

    /** Bar 5 is late until it is slow enough: it is taken alone until it has stood twice, and the whole comes again. */
    @Test
    void anEveningOnWhichOneBarIsLateAboveItsPace() {
        assertEquals(
                List.of(
                        "1-8 at 70 in C",
                        "4-5 at 60 in C",
                        "4-5 at 52 in C",
                        "4-5 at 56 in C",
                        "1-8 at 63 in C",
                        "Late. Now bars 4 and 5 alone, slower, at 53. | Tomorrow: first bars 4 and 5 in C major, each"
                                + " hand alone, then both at 53."),
                evening(round -> round.tempo() > 58 ? late(4 - round.first()) : RoundResult.clean(), 5));
    }

    @Test
    void theFirstBarIsTakenAlone() {
        RehearsalState state = RehearsalState.begin(GOAL).after(late(0));
        assertEquals("1-1 at 60 in C", told(state.round()));
        assertEquals("Late. Now bar 1 alone, slower, at 60.", state.lead().toString());
    }

    @Test
    void aWildEveningIsMadeSlowerAndShorterAndEndsByItself() {
        assertEquals(
                List.of(
                        "1-8 at 70 in C",
                        "1-2 at 50 in C",
                        "1-2 at 44 in C",
                        "1-2 at 40 in C",
                        "1-2 at 40 in C",
                        "That is enough for today. | Tomorrow: bars 1 and 2 chord by chord without any time, one hand and"
                                + " then both, before the count comes in."),
                evening(round -> RoundResult.wild(round.bars()), 100));
    }

    @Test
    void eachStepIsSaid() {
        RehearsalState begin = RehearsalState.begin(GOAL);
        assertEquals("", begin.lead().toString());
        assertEquals(
                "Clean; on a little quicker, at 74.",
                begin.after(RoundResult.clean()).lead().toString());
        RehearsalState alone = begin.after(RoundResult.stumbled(4));
        assertEquals("Now bars 4 and 5 alone, slower, at 60.", alone.lead().toString());
        RehearsalState stands = alone.after(RoundResult.clean());
        assertEquals("Clean; once more, at 63.", stands.lead().toString());
        assertEquals(
                "That stands. Now the whole again, at 67.",
                stands.after(RoundResult.clean()).lead().toString());
        assertEquals("Late. Again, slower, at 52.", alone.after(late(1)).lead().toString());
        assertEquals(
                "Most of it went astray, so slower and shorter: bars 1 and 2, at 50.",
                begin.after(RoundResult.wild(8)).lead().toString());
    }

    @Test
    void whenTheTimeIsUpItSaysWhereToGoOn() {
        RehearsalState state = RehearsalState.begin(GOAL).after(RoundResult.clean());
        RehearsalState over = state.end(Phrase.sentence("The minutes are over."));
        assertTrue(over.isOver());
        assertFalse(state.isOver());
        assertEquals("Tomorrow: go on in C major at 74.", over.tomorrow().toString());
        RehearsalState next = RehearsalState.begin(GOAL);
        while (!next.round().key().equals(Key.parse("F"))) {
            next = next.after(RoundResult.clean());
        }
        assertEquals("It stands in C major. Now in F major, at 80.", next.lead().toString());
        assertEquals(
                "Tomorrow: first C major, where it stands, then go on in F major at 80.",
                next.tomorrow().toString());
    }

    /** However it goes, no round is quicker than the goal, none outside the place, and a teacher comes to an end. */
    @Test
    void staysWithinThePlaceAndEnds() {
        for (int seed = 0; seed < 300; seed++) {
            java.util.SplittableRandom chance = new java.util.SplittableRandom(seed);
            int skill = chance.nextInt(100);
            RehearsalState state = RehearsalState.begin(GOAL);
            int rounds = 0;
            while (!state.isOver() && rounds++ < 2000) {
                Round round = state.round();
                assertTrue(round.tempo() >= 40 && round.tempo() <= 100, round::toString);
                assertTrue(round.first() >= 0 && round.first() <= round.last() && round.last() < 8, round::toString);
                int luck = chance.nextInt(100);
                RoundResult result = luck < skill
                        ? RoundResult.clean()
                        : luck > 95
                                ? RoundResult.wild(round.bars())
                                : RoundResult.stumbled(chance.nextInt(round.bars()));
                state = state.after(result);
            }
            assertTrue(state.isOver() || skill > 20, "goes on for ever with " + skill);
            assertTrue(state.tomorrow().toString().startsWith("Tomorrow: "));
        }
    }

    @Test
    void aRehearsalNeedsABarAndAKey() {
        assertEquals(
                "a rehearsal needs a bar and a key, not 0 and []",
                assertThrows(IllegalArgumentException.class, () -> new RehearsalGoal(0, 1, 80, List.of()))
                        .getMessage());
    }
}
