package monochord.harmony.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import monochord.harmony.ChordFunction;
import monochord.harmony.HarmonicFunction;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What the reasons say is so of the chords that stand there; nothing is taken from the sentence but its subject. */
class ReasonsHoldTest {
    private static final List<String> MAJOR_ROWS = List.of(
            "C G Am F",
            "C F G C F C G C",
            "C | Am | F | G | C | Em | F G | C",
            "C G/B Am Em/G F C/E Dm7 G7",
            "Cmaj7 A7 Dm7 G7 Cmaj7 Am7 Dm7 G7 Cmaj7",
            "C C F F C C G G C C",
            "C Bdim C F Fm C G F C",
            "Em F G Am Dm G C Am",
            "C | . | Dm | . | G | . | C | C");
    private static final List<String> MINOR_ROWS = List.of(
            "Am Dm E Am", "Am G F E", "Am F C G Am F Dm E", "Am | . | Dm | E7 | Am C G Am", "Am Bdim E Am Em F G Am");

    private static List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (String tonic : List.of("C", "Eb", "F#")) {
            Interval up = NoteName.parse("C").to(NoteName.parse(tonic));
            MAJOR_ROWS.forEach(row -> add(changes, row, Key.parse("C"), Key.parse(tonic)));
            Key minor = Key.minor(NoteName.parse("A").plus(up));
            MINOR_ROWS.forEach(row -> add(changes, row, Key.parse("Am"), minor));
        }
        return changes;
    }

    private static void add(List<Change> changes, String row, Key from, Key to) {
        Progression progression = Progression.parse(row, from).in(to);
        Recolour.of(progression, Optional.empty(), new Recolour.RecolourOptions(false, false, true))
                .ideas()
                .forEach(idea -> changes.add(idea.change()));
    }

    @Test
    void everyIdiomSaysWhatIsSo() {
        Set<String> seen = new TreeSet<>();
        for (Change change : changes()) {
            seen.add(change.idiom().name());
            assertTrue(
                    holds(change), () -> change.row().progression + " in " + change.key() + ": " + change.sentence());
        }
        assertEquals(new TreeSet<>(AskedIdiom.names()), seen);
    }

    private static boolean holds(Change change) {
        Chord first = change.now(0);
        Chord last = change.now(change.chords().size() - 1);
        Chord after = change.after();
        return switch (change.idiom().name()) {
            case "borrowed iv" ->
                sinks(first.tones().get(1), after) && does(first, change, HarmonicFunction.SUBDOMINANT);
            case "borrowed iiø7" ->
                sinks(first.tones().get(2), after) && does(first, change, HarmonicFunction.SUBDOMINANT);
            case "borrowed bVI" -> loweredSixth(change);
            case "walk up", "backdoor" -> halfSteps(last.root(), after.root()) == 2;
            case "double plagal" -> halfSteps(first.root(), next(change).root()) == 7;
            case "borrowed bVII" -> halfSteps(first.root(), after.root()) % 5 == 2;
            case "borrowed bIII" ->
                halfSteps(first.root(), after.root()) == 2
                        && first.holds(change.key().note(5));
            case "borrowed viio7" ->
                halfSteps(first.root(), after.root()) == 1
                        && sinks(first.tones().get(3), after);
            case "borrowed IV" -> !change.key().holds(first.tones().get(1));
            case "borrowed I" -> change.last() == change.row().size() - 1;
            case "neapolitan" -> halfSteps(change.key().tonic(), first.root()) == 1 && dominant(after, change);
            case "applied" -> leads(last, after);
            case "two-five" -> halfSteps(first.root(), next(change).root()) == 5;
            case "tritone" -> halfSteps(after.root(), last.root()) == 1;
            case "flat nine" -> sinks(first.tones().get(4), after);
            case "passing diminished" -> fillsWholeStep(change.before().bass(), first.bass(), after.bass());
            case "common-tone diminished" ->
                change.chords().stream().allMatch(event -> event.chord().holds(first.bass()));
            case "line cliche" ->
                change.chords().stream().allMatch(event -> event.chord().root().equals(first.root()));
            case "rising line" ->
                change.chords().stream().allMatch(event -> event.chord().holds(first.root()));
            case "pedal on 1", "pedal on 5" ->
                change.chords().stream().allMatch(event -> event.chord().bass().equals(first.bass()));
            case "chromatic descent", "stepping bass" -> comesDown(change);
            case "mediant" ->
                Set.of(3, 4, 8, 9).contains(halfSteps(change.before().root(), first.root()));
            case "suspended" -> change.before().holds(first.root().plus(Interval.PERFECT_FOURTH)) && settles(change);
            case "added tone" -> change.old(0).tones().stream().allMatch(first::holds);
            default -> false;
        };
    }

    private static int halfSteps(NoteName from, NoteName to) {
        return Math.floorMod(to.pitchClass() - from.pitchClass(), 12);
    }

    private static boolean sinks(NoteName tone, Chord after) {
        return after.tones().stream().anyMatch(to -> halfSteps(to, tone) == 1);
    }

    private static boolean does(Chord chord, Change change, HarmonicFunction function) {
        return ChordFunction.of(chord, change.key()).main() == function;
    }

    private static boolean dominant(Chord chord, Change change) {
        return ChordFunction.of(chord, change.key()).isDominantOfKey();
    }

    /** The chord that comes behind the first one of the change. */
    private static Chord next(Change change) {
        return change.chords().size() > 1 ? change.now(1) : change.after();
    }

    /** A tonic in it; where it follows a dominant that is one, where it prepares one that stands a half step below. */
    private static boolean loweredSixth(Change change) {
        List<Chord> chords = new ArrayList<>();
        change.chords().forEach(event -> chords.add(event.chord()));
        Chord sixth = chords.stream()
                .filter(chord -> halfSteps(change.key().tonic(), chord.root()) == 8)
                .findFirst()
                .orElseThrow();
        String sentence = change.sentence().toString();
        boolean prepares =
                !sentence.contains("prepares") || halfSteps(next(change).root(), sixth.root()) == 1;
        boolean follows = !sentence.contains("expected")
                || dominant(chords.indexOf(sixth) == 0 ? change.before() : chords.get(0), change);
        return sixth.holds(change.key().tonic()) && prepares && follows;
    }

    private static boolean leads(Chord dominant, Chord goal) {
        boolean third = halfSteps(dominant.tones().get(1), goal.root()) == 1;
        return third && halfSteps(dominant.root(), goal.root()) == 5;
    }

    private static boolean fillsWholeStep(NoteName one, NoteName middle, NoteName other) {
        int up = halfSteps(one, middle);
        return (up == 1 || up == 11) && halfSteps(middle, other) == up;
    }

    private static boolean comesDown(Change change) {
        for (int i = 1; i < change.chords().size(); i++) {
            int down = halfSteps(change.now(i).bass(), change.now(i - 1).bass());
            if (down != 1 && down != 2) {
                return false;
            }
        }
        return true;
    }

    private static boolean settles(Change change) {
        return halfSteps(change.now(1).tones().get(1), change.now(0).root().plus(Interval.PERFECT_FOURTH)) <= 2;
    }

    @Test
    @DisplayName("a line of half steps has each of its notes in the next chord")
    void linesAreThere() {
        int seen = 0;
        for (Change change : changes()) {
            Optional<HalfStepLine> line = HalfStepLine.of(change);
            if (line.isPresent()) {
                List<Chord> chords = new ArrayList<>();
                Optional.ofNullable(change.before()).ifPresent(chords::add);
                change.chords().forEach(event -> chords.add(event.chord()));
                Optional.ofNullable(change.after()).ifPresent(chords::add);
                assertTrue(isIn(line.get(), chords), () -> line + " in " + chords);
                seen++;
            }
        }
        assertTrue(seen > 100, "only " + seen);
    }

    private static boolean isIn(HalfStepLine line, List<Chord> chords) {
        List<NoteName> notes = line.notes();
        for (int from = 0; from + notes.size() <= chords.size(); from++) {
            int found = 0;
            while (found < notes.size() && chords.get(from + found).holds(notes.get(found))) {
                found++;
            }
            if (found == notes.size()) {
                return true;
            }
        }
        return false;
    }

    @Test
    @DisplayName("what was said and is not so is not said any more")
    void saysNothingOfTheOldKind() {
        for (Change change : changes()) {
            String sentence = change.sentence().toString();
            assertFalse(sentence.contains("steady in any chord"), sentence);
            assertFalse(sentence.contains("does what"), sentence);
        }
    }
}
