package monochord.harmony.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.Melody;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What makes a good colour is common practice, no source; the search over combinations is held to plain counting. */
class RecolourTest {
    private static final String WALTZ = "IV I V vi V I";

    private static Recolour recolour(String chords, String key) {
        return Recolour.of(Progression.parse(chords, Key.parse(key)), Optional.empty());
    }

    private static Recolour recolour(String chords, String key, String melody) {
        return Recolour.of(Progression.parse(chords, Key.parse(key)), Optional.of(Melody.parse(melody)));
    }

    private static int rank(Recolour recolour, int at, String to) {
        return IntStream.range(0, recolour.ideas().size())
                .filter(i -> recolour.ideas().get(i).at() == at
                        && recolour.ideas().get(i).toNumeral().toString().equals(to))
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName(
            "for the sixth in 4 1 5 6 5 1 comes the lowered one first, as a major seventh, the V suspended before it")
    void theLoweredSixthComesFirstInEveryKey() {
        for (Key key : Key.majorKeys()) {
            Recolour recolour = recolour(WALTZ, key.toString());
            Idea first = recolour.ideas().get(0);
            assertEquals(3, first.at());
            assertEquals("vi", first.fromNumeral().toString());
            assertEquals("bVImaj7", first.toNumeral().toString());
            assertEquals("iv(add9) I Vsus4 bVImaj7 V I", recolour.best().numerals(Signs.ASCII));
            assertTrue(rank(recolour, 3, "bVI") < 12, () -> "bVI is idea " + rank(recolour, 3, "bVI"));
        }
    }

    @Test
    void saysWhy() {
        List<String> reasons = recolour(WALTZ, "C").ideas().get(0).reasons().stream()
                .map(reason -> reason.sentence().toString())
                .toList();
        assertEquals(
                List.of(
                        "The bass moves by half step: G A♭ G.",
                        "G is shared with the chords beside it.",
                        "A♭maj7 is borrowed from C minor and does what Am did.",
                        "Its added G is the fifth of the key, steady in any chord.",
                        "Its tone from outside the key goes on by half step into G."),
                reasons);
    }

    private static List<Idea> ideas(String chords, String key, int at, String to) {
        return recolour(chords, key).ideas().stream()
                .filter(idea -> idea.at() == at && idea.toNumeral().toString().equals(to))
                .toList();
    }

    /**
     * What stands in for what, by its place. Source: Integrated Music Theory (open university course text), lesson 16a;
     * that vi before the dominant prepares it and is the tonic's place behind it, Open Music Theory (2014),
     * "harmonicFunctions" and "cadenceTypes".
     */
    @ParameterizedTest(name = "{3} for chord {2} of {0} in {1}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
            IV I V vi V I     | C  | 2 | bVIIadd9 | B♭add9 is borrowed from C mixolydian and takes the place of G without a leading note.
            I viio I          | C  | 1 | bVII     | B♭ is borrowed from C mixolydian and takes the place of Bdim without a leading note.
            I Vsus4 I         | C  | 1 | bVII     | B♭ is borrowed from C mixolydian and takes the place of Gsus4 without a leading note.
            IV V I IV         | C  | 2 | bVI      | A♭ is borrowed from C minor and comes where C was expected.
            I iii IV V        | C  | 1 | bIII     | E♭ is borrowed from C dorian, the third degree lowered: a colour in place of Em.
            I vi V I          | C  | 1 | iv       | Fm is borrowed from C minor and does what Am did.
            I IV V I          | C  | 1 | bVII     | B♭ is borrowed from C mixolydian and does what F did.
            I IV I            | C  | 1 | iv       | Fm is borrowed from C minor and does what F did.
            I vi IV I         | C  | 1 | bVI      | A♭ is borrowed from C minor and does what Am did.
            I viio vi         | C  | 2 | i        | Bdim leads to Cm with the leading note.
            I V vi            | C  | 2 | i        | G leads to Cm as its dominant.
            I V7/V V I        | C  | 1 | iv       | Fm is borrowed from C minor and takes the place of D7 before the dominant.
            """)
    void saysWhatTheChordDoesInstead(String chords, String key, int at, String to, String sentence) {
        List<Idea> ideas = ideas(chords, key, at, to);
        assertEquals(1, ideas.size(), to);
        List<String> said = ideas.get(0).reasons().stream()
                .map(reason -> reason.sentence().toString())
                .toList();
        assertTrue(said.contains(sentence), said::toString);
    }

    /** Sources as above: none of these does there what the chord did. */
    @ParameterizedTest(name = "{3} does not stand for chord {2} of {0} in {1}")
    @CsvSource({
        "I vi IV V, C, 1, bVII",
        "I vi IV V, C, 1, iio",
        "I V7/vi vi IV, C, 1, bVI",
        "I V7/vi vi IV, C, 1, i",
        "I IV I V, C, 2, bVI",
        "I IV V I, C, 3, bIII",
        "i VI III VII, E minor, 2, vi",
        "i iv V i, A minor, 2, bvii"
    })
    void offersNothingThatDoesSomethingElse(String chords, String key, int at, String to) {
        assertEquals(List.of(), ideas(chords, key, at, to));
    }

    @Test
    @DisplayName("where a chord is said to do what a dominant did, it leads on as that did")
    void doesNotContradictItself() {
        int seen = 0;
        for (String chords : List.of("IV I V vi V I", "I vi ii V7 I", "I viio I V IV I", "I iii vi V7/V V I")) {
            for (Key key : Key.majorKeys()) {
                for (Idea idea : recolour(chords, key.toString()).ideas()) {
                    List<String> said = idea.reasons().stream()
                            .map(reason -> reason.sentence().toString())
                            .toList();
                    boolean same = said.stream().anyMatch(one -> one.contains("does what"));
                    String leadsNoMore = idea.from().write(Signs.MUSIC) + " no longer leads";
                    boolean homeLost = said.contains("The tonic is not heard there any more.");
                    seen += same ? 1 : 0;
                    assertFalse(
                            same && (homeLost || said.stream().anyMatch(one -> one.startsWith(leadsNoMore))),
                            said::toString);
                }
            }
        }
        assertTrue(seen > 200, "only " + seen);
    }

    @Test
    @DisplayName("a tune that rests on the natural third over it pushes the lowered sixth down")
    void aTuneThatFightsItPushesItDown() {
        int alone = rank(recolour(WALTZ, "C"), 3, "bVImaj7");
        Recolour third = recolour(WALTZ, "C", "r:6 E4:2 r:4");
        Recolour sixth = recolour(WALTZ, "C", "r:6 A4:2 r:4");
        Recolour first = recolour(WALTZ, "C", "r:6 C5:2 r:4");
        assertEquals(0, alone);
        assertTrue(rank(third, 3, "bVImaj7") > 20, () -> "idea " + rank(third, 3, "bVImaj7"));
        assertTrue(rank(sixth, 3, "bVImaj7") > 20, () -> "idea " + rank(sixth, 3, "bVImaj7"));
        assertEquals(0, rank(first, 3, "bVImaj7"));
        Idea fought = third.ideas().get(rank(third, 3, "bVImaj7"));
        assertEquals("E4", fought.clashes().get(0).pitch().toString());
        assertEquals("Eb4", fought.clashes().get(0).change().orElseThrow().to().toString());
        assertFalse(third.best().chords().contains(Chord.parse("Abmaj7")));
    }

    @Test
    void theSameInEveryKey() {
        String chords = "I | vi IV | ii V | I |";
        String melody = "E4:2 G4 E4 | C4 D4 C4 A3 | D4:2 B3:2 | C4:4";
        Recolour inC = recolour(chords, "C", melody);
        for (Key key : Key.majorKeys()) {
            Interval up = Key.parse("C").tonic().to(key.tonic());
            Recolour there = Recolour.of(
                    Progression.parse(chords, key),
                    Optional.of(Melody.parse(melody).plus(up)));
            assertEquals(inC.gain(), there.gain());
            assertEquals(inC.best().numerals(Signs.ASCII), there.best().numerals(Signs.ASCII));
            assertEquals(
                    inC.ideas().stream()
                            .map(idea -> idea.at() + idea.toNumeral().toString() + idea.score())
                            .toList(),
                    there.ideas().stream()
                            .map(idea -> idea.at() + idea.toNumeral().toString() + idea.score())
                            .toList());
        }
    }

    @ParameterizedTest(name = "the best of all combinations of {0} is found")
    @ValueSource(strings = {"I", "V I", "IV V I", "vi V I", "I vi IV", "i iv V"})
    void findsWhatTryingEveryCombinationFinds(String chords) {
        for (String tune : List.of("", "E4:2 A4:2 C5:2", "B4:1 C5:1 r:2 E4:2")) {
            Key key = Key.parse(chords.startsWith("i ") ? "Cm" : "C");
            Melody melody = tune.isEmpty() ? null : Melody.parse(tune);
            OptionTable canvas = new OptionTable(Progression.parse(chords, key), melody);
            assertEquals(
                    byTrying(canvas, new ArrayList<>()),
                    Combination.best(canvas, 0).score());
        }
    }

    /** The score of every combination, added up anew from the formula's two sums. */
    private static int byTrying(OptionTable canvas, List<Integer> chosen) {
        int at = chosen.size();
        if (at == canvas.size()) {
            return score(canvas, chosen);
        }
        int best = Integer.MIN_VALUE;
        for (int shade = 0; shade < canvas.shades(at).size(); shade++) {
            chosen.add(shade);
            best = Math.max(best, byTrying(canvas, chosen));
            chosen.remove(at);
        }
        return best;
    }

    private static int score(OptionTable canvas, List<Integer> chosen) {
        int score = 0;
        for (int at = 0; at < chosen.size(); at++) {
            score += canvas.count(at, chosen.get(at));
            if (at > 0) {
                score += TransitionScore.score(
                        canvas.shades(at - 1).get(chosen.get(at - 1)),
                        canvas.shades(at).get(chosen.get(at)));
            }
        }
        return score;
    }

    @Test
    @DisplayName("an idea scores what its one change adds to the whole")
    void anIdeaScoresWhatItAdds() {
        OptionTable canvas = new OptionTable(Progression.parse(WALTZ, Key.parse("G")), Melody.parse("G4:4 B4:2 E4:2"));
        for (int at = 0; at < canvas.size(); at++) {
            for (int shade = 1; shade < canvas.shades(at).size(); shade++) {
                List<Integer> one = new ArrayList<>(List.of(0, 0, 0, 0, 0, 0));
                one.set(at, shade);
                int added = score(canvas, one) - canvas.plainScore();
                Idea idea = canvas.idea(at, canvas.shades(at).get(shade));
                assertEquals(added, idea.score());
                int said = idea.reasons().stream().mapToInt(Reason::points).sum();
                assertTrue(said >= idea.score(), () -> idea + " says " + said);
            }
        }
    }

    @Test
    void keepsBarsHoldsAndRepeats() {
        Progression best = recolour("IV . I | V vi | % | V . . . | I |", "C").best();
        assertEquals(5, best.bars().size());
        assertTrue(best.barred());
        assertEquals(3, best.bars().get(0).shares());
        assertEquals(best, Progression.parse(best.toString(), best.key()).in(best.key()));
    }

    @Test
    @DisplayName("past sixteen bars the search is bounded and still no worse than the plain chords")
    void longProgressions() {
        Recolour recolour = recolour("I | vi | IV | V |".repeat(40) + " I |", "A");
        assertEquals(161, recolour.best().bars().size());
        assertTrue(recolour.gain() > 0);
    }

    @Test
    @DisplayName("the colours of a minor key and chords from anywhere do not break it")
    void anything() {
        for (String chords : List.of("i VI III VII", "Cm7b5 F7#9 Bbmaj9 N6", "Caug/E G5 Dsus2/A", "It6 V7 i", "C")) {
            for (Key key : Key.minorKeys()) {
                Recolour recolour = Recolour.of(Progression.parse(chords, key), Optional.empty());
                assertTrue(recolour.gain() >= 0);
                assertEquals(
                        recolour.progression().slots().size(),
                        recolour.best().slots().size());
            }
        }
    }

    @Test
    @DisplayName("no combination lets the tune clash more than its score says")
    void theTuneIsHeard() {
        String tune = "C5:2 G4:2 D5:2 E5:2 D5:2 C5:2";
        Recolour recolour = recolour(WALTZ, "C", tune);
        Fit before = Fit.of(Melody.parse(tune), recolour.progression());
        Fit after = Fit.of(Melody.parse(tune), recolour.best());
        assertTrue(after.friction() <= before.friction() + recolour.gain(), after::toString);
    }
}
