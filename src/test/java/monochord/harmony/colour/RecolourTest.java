package monochord.harmony.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.Melody;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What counts how much is common practice, no source; the search over combinations is held to plain counting. */
class RecolourTest {
    private static Recolour recolour(String chords, String key) {
        return Recolour.of(Progression.parse(chords, Key.parse(key)), Optional.empty());
    }

    private static Recolour recolour(String chords, String key, String melody) {
        return Recolour.of(Progression.parse(chords, Key.parse(key)), Optional.of(Melody.parse(melody)));
    }

    private static String first(Recolour recolour) {
        return recolour.change()
                .map(idea -> idea.progression().symbols(Signs.ASCII))
                .orElse("");
    }

    /** Semicolons are bar lines. Our conclusion from Integrated Music Theory, 16a, and Open Music Theory (2014), "alteredSubdominants". */
    @ParameterizedTest(name = "{0} in {1} becomes {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C G Am F                | C  | C G7sus4 Abmaj7 F
            Am F C G                | C  | Am F Fm C G
            C F                     | C  | C F Fm
            F C G C F C G C         | C  | F C G C F Fm C G C
            F C G Am G C            | C  | F C Gsus4 Abmaj7 G C
            C ; F ; C ; G ; C       | C  | C ; F Fm ; C ; G ; C ;
            Dm7 G7 Cmaj7            | C  | Dm7 Db7 Cmaj7
            D A G D                 | D  | D A G Gm D
            Am G F E                | Am | Am Am7/G D/F# F E
            C                       | C  | ''
            G C                     | C  | ''
            """)
    void changesThePlaceThatLiftsMost(String chords, String key, String changed) {
        assertEquals(changed.replace(';', '|'), first(recolour(chords.replace(';', '|'), key)));
    }

    @Test
    void saysWhy() {
        List<String> reasons = recolour("C G Am F", "C").change().orElseThrow().reasons().stream()
                .map(Object::toString)
                .toList();
        assertEquals(
                List.of(
                        "A♭maj7 comes where Am was expected after the dominant, and the suspended C of G7sus4 stays as its"
                                + " third.",
                        "One voice can rise by half steps: G A♭ A."),
                reasons);
    }

    @Test
    @DisplayName("F C G C twice over: one change, in the repeat")
    void doesNotTurnEveryChord() {
        Recolour recolour = recolour("F C G C F C G C", "C");
        assertEquals(1, recolour.combined().size());
        assertTrue(recolour.combined().get(0).first() >= 4);
    }

    @Test
    @DisplayName("a row that ends keeps its last chord, and the dominant before it")
    void keepsTheCadence() {
        int seen = 0;
        for (String row : List.of("I IV V I", "I vi ii V7 I", "I IV V I I", "I V vi IV V7 I", "I ii7 V7 Imaj7")) {
            for (Idea idea : recolour(row, "C").ideas()) {
                Progression now = idea.progression();
                List<Chord> chords = now.chords();
                Chord last = chords.get(chords.size() - 1);
                int before = chords.size() - 2;
                while (chords.get(before).root().equals(last.root()) || isSuspendedTonic(chords.get(before))) {
                    before--;
                }
                Chord dominant = chords.get(before);
                boolean leads = dominant.tones().stream()
                        .anyMatch(tone -> tone.soundsLike(Chord.parse("B").root()));
                assertEquals("C", last.root().toString());
                assertTrue(leads, () -> idea.name() + " " + now);
                seen++;
            }
        }
        assertTrue(seen > 60, "only " + seen);
    }

    private static boolean isSuspendedTonic(Chord chord) {
        return chord.toString().startsWith("Csus");
    }

    @Test
    void boldnessGoesFurther() {
        Progression row = Progression.parse("I | vi | IV | V | I | vi | ii V | I |", Key.parse("Bb"));
        Recolour usual = Recolour.of(row, Optional.empty());
        Recolour bold = Recolour.of(row, Optional.empty(), new Recolour.RecolourOptions(true, false, false));
        assertTrue(bold.combined().size() > usual.combined().size());
        assertEquals(Chord.parse("Bb"), bold.best().chords().get(0));
    }

    @Test
    void anOpenEndingHasToBeAskedFor() {
        Progression row = Progression.parse("I ii V I", Key.parse("C"));
        Recolour open = Recolour.of(row, Optional.empty(), new Recolour.RecolourOptions(false, false, true));
        assertTrue(open.ideas().stream().anyMatch(idea -> idea.name().equals("backdoor")));
        assertFalse(recolour("I ii V I", "C").ideas().stream()
                .anyMatch(idea -> idea.name().equals("backdoor")));
    }

    @Test
    void aRowMarkedAsALoopLeadsBack() {
        Progression row = Progression.parse("C F G C", Key.parse("G"));
        assertTrue(recolour("C F G C", "G").isLoop());
        assertFalse(recolour("C F G C", "C").isLoop());
        assertTrue(Recolour.of(
                        Progression.parse("C F G C", Key.parse("C")),
                        Optional.empty(),
                        new Recolour.RecolourOptions(false, true, false))
                .isLoop());
        assertEquals(4, row.chords().size());
    }

    @Test
    @DisplayName("every suspension that is proposed is followed by its chord, or its fourth stays as a chord tone")
    void suspensionsResolve() {
        for (String row : List.of("C G Am F", "I vi IV V", "i iv V i", "I V7 I V7 I", "I ii7 V7 Imaj7")) {
            String key = row.startsWith("i") ? "Am" : "C";
            for (Idea idea : recolour(row, key).ideas()) {
                List<Chord> chords = idea.progression().chords();
                for (int i = 0; i < chords.size(); i++) {
                    Chord chord = chords.get(i);
                    if (chord.toString().contains("sus4")) {
                        Chord next = chords.get((i + 1) % chords.size());
                        boolean resolves = next.root().equals(chord.root())
                                || next.holds(chord.root().plus(Interval.PERFECT_FOURTH));
                        assertTrue(resolves, () -> idea.progression().toString());
                    }
                }
            }
        }
    }

    @Test
    @DisplayName("a tune that rests on the natural third over it pushes the lowered sixth out")
    void aTuneThatFightsItPushesItOut() {
        assertEquals("C G7sus4 Abmaj7 F", first(recolour("C G Am F", "C", "r:4 C5:2 r:2")));
        assertFalse(first(recolour("C G Am F", "C", "r:4 E5:2 r:2")).contains("Ab"));
        Idea fought = recolour("C G Am F", "C", "r:4 E4:2 r:2").ideas().stream()
                .filter(idea -> idea.progression().toString().equals("C G Abmaj7 F"))
                .findFirst()
                .orElseThrow();
        assertEquals("E4", fought.clashes().get(0).pitch().toString());
        assertEquals("Eb4", fought.clashes().get(0).change().orElseThrow().to().toString());
        assertTrue(fought.reasons().toString().contains("More of the tune clashes than before."));
    }

    @ParameterizedTest(name = "what {0} adds under a tune is what judging the whole tune anew says")
    @ValueSource(strings = {"C G Am F", "I | vi IV | ii V | I |", "I | . IV | V7 | I |"})
    void theTuneIsHeard(String chords) {
        String melody = "G4:1/2 E4:1/2 G4:1 A4:2 | B4:1 C5:1 r:1 D5:1 | C5:3/2 B4:1/2 A4:1 F4:1 | E4:4 | G4:4 | A4:4 |";
        Progression row = Progression.parse(chords, Key.parse("C"));
        Melody tune = Melody.parse(melody);
        int plain = Fit.of(tune, row).friction();
        TuneFit overlay = new TuneFit(Optional.of(tune), row);
        List<Idea> ideas = Recolour.of(row, Optional.of(tune)).ideas();
        for (Idea idea : ideas) {
            int added = Fit.of(tune, idea.progression()).friction() - plain;
            assertEquals(
                    added,
                    overlay.added(idea.change()),
                    () -> idea.progression().toString());
        }
        assertTrue(ideas.size() > 8);
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
            assertEquals(summary(inC), summary(there));
        }
    }

    private static List<String> summary(Recolour recolour) {
        return recolour.ideas().stream()
                .map(idea -> idea.first() + idea.progression().numerals(Signs.ASCII) + idea.score())
                .toList();
    }

    @ParameterizedTest(name = "the best of all combinations of {0} is found")
    @ValueSource(
            strings = {
                "I V I",
                "I vi IV V",
                "I IV I V I",
                "C G Am F C G Am F",
                "I vi ii V I IV V I",
                "i iv V i VI iv V i",
                "I | IV | I | V I | vi | ii V | I |"
            })
    void findsWhatTryingEveryCombinationFinds(String chords) {
        String key = chords.startsWith("i ") ? "Cm" : "C";
        for (boolean bold : List.of(false, true)) {
            Recolour recolour = Recolour.of(
                    Progression.parse(chords, Key.parse(key)),
                    Optional.empty(),
                    new Recolour.RecolourOptions(bold, false, false));
            List<Idea> ideas = Recolour.combinable(recolour.ideas(), bold);
            assertEquals(
                    byTrying(ideas, new ArrayList<>(), 0, bold),
                    Combination.best(ideas, bold).score(),
                    () -> ideas.size() + " ideas");
        }
    }

    /** The highest score of any set of ideas that go together, each set added up anew. */
    private static int byTrying(List<Idea> ideas, List<Idea> chosen, int from, boolean bold) {
        int best = score(chosen, bold);
        for (int i = from; i < ideas.size(); i++) {
            List<Idea> more = new ArrayList<>(chosen);
            more.add(ideas.get(i));
            if (score(more, bold) > Integer.MIN_VALUE) {
                best = Math.max(best, byTrying(ideas, more, i + 1, bold));
            }
        }
        return best;
    }

    private static int score(List<Idea> chosen, boolean bold) {
        List<Idea> inOrder = chosen.stream()
                .sorted((one, other) ->
                        one.change().changedFrom() - other.change().changedFrom())
                .toList();
        int score = 0;
        for (int i = 0; i < inOrder.size(); i++) {
            score += Combination.alone(inOrder.get(i), bold);
            if (i > 0) {
                if (!Combination.goTogether(inOrder.get(i - 1), inOrder.get(i))) {
                    return Integer.MIN_VALUE;
                }
                score += Combination.together(inOrder.get(i - 1), inOrder.get(i), bold);
            }
        }
        return score;
    }

    @Test
    @DisplayName("what each idea counts never grows down the list")
    void theBestFirst() {
        for (String row : List.of("C G Am F", "I vi ii V7 I", "I IV I V I IV I V I")) {
            List<Integer> scores =
                    recolour(row, "C").ideas().stream().map(Idea::score).toList();
            assertEquals(scores.stream().sorted((a, b) -> b - a).toList(), scores);
        }
    }

    @Test
    void keepsBarsHoldsAndRepeats() {
        Progression best = recolour("IV . I | V vi | % | V . . . | I |", "C").best();
        assertEquals(5, best.bars().size());
        assertTrue(best.barred());
        assertEquals(best, Progression.parse(best.toString(), best.key()).in(best.key()));
    }

    @Test
    @DisplayName("a chord that is put in between takes half of the time of the one before it")
    void takesHalfOfItsNeighboursTime() {
        Recolour recolour = recolour("C | F | C | G | C |", "C");
        assertEquals("C | F Fm | C | G | C |", first(recolour));
        assertEquals("C | . . F Fm | C | G | C |", first(recolour("C | . F | C | G | C |", "C")));
    }

    /** Common practice, no source: a chord changes with a beat, in three with the third one. */
    @Test
    void changesWithABeatOfATuneInThree() {
        String waltz = "| C4:2 E4 | F4:2 C5 | G4:2 E4 | D4 B3 G3 | C4:3 |";
        assertEquals("C | F . Fm | C | G | C |", first(recolour("C | F | C | G | C |", "C", waltz)));
        String jig = "| C4 E4:1/2 G4 E4:1/2 | F4 A4:1/2 C5 F4:1/2 | G4 E4:1/2 G4 E4:1/2 | D4 G4:1/2 D4 B3:1/2 | C4:3 |";
        assertEquals("C | F Fm | C | G | C |", first(recolour("C | F | C | G | C |", "C", jig)));
        Progression plain = Progression.parse("C | F | C | G | C |", Key.parse("C"));
        Recolour.RecolourOptions inThree = new Recolour.RecolourOptions(false, false, false, Optional.of(Beats.ONE));
        assertEquals("C | F . Fm | C | G | C |", first(Recolour.of(plain, Optional.empty(), inThree)));
    }

    @Test
    void longProgressions() {
        Recolour recolour = recolour("I | vi | IV | V |".repeat(40) + " I |", "A");
        assertEquals(161, recolour.best().bars().size());
        assertTrue(recolour.gain() > 0);
    }

    @Test
    @DisplayName("the colours of a minor key and chords from anywhere do not break it")
    void anything() {
        for (String chords : List.of("i VI III VII", "Cm7b5 F7#9 Bbmaj9 N6", "Caug/E G5 Dsus2/A", "It6 V7 i", "C")) {
            Stream.concat(
                            Key.minorKeys().stream(),
                            Stream.of("dorian", "mixolydian", "locrian").map(mode -> Key.parse("D " + mode)))
                    .forEach(key -> {
                        Recolour recolour = Recolour.of(Progression.parse(chords, key), Optional.empty());
                        assertTrue(recolour.gain() >= 0);
                        recolour.ideas()
                                .forEach(idea -> assertFalse(idea.reasons().isEmpty()));
                        assertEquals(
                                recolour.progression().bars().size(),
                                recolour.best().bars().size());
                    });
        }
    }
}
