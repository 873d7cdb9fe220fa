package monochord.course.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What was played against what was due, at a quarter of one second; common practice, no source. */
class HeardRoundTest {
    private static final Key KEY = Key.parse("Eb");
    private static final double QUARTER = 1000;

    /** {@code Eb3+G3+Bb3@0 Ab3+C4@4.1-7}: keys, and the beats at which they go down and up. */
    private static List<KeyPress> played(String text) {
        List<KeyPress> presses = new ArrayList<>();
        for (String stroke : text.isEmpty() ? new String[0] : text.split(" ")) {
            String[] parts = stroke.split("@");
            String[] times = parts[1].split("(?<=\\d)-");
            double down = Double.parseDouble(times[0]) * QUARTER;
            double up = times.length > 1 ? Double.parseDouble(times[1]) * QUARTER : down + 3500;
            Stream.of(parts[0].split("\\+"))
                    .forEach(key -> presses.add(new KeyPress(Pitch.parse(key).midiNumber(), down, up)));
        }
        return presses;
    }

    private static HeardRound heard(String chords, DueChange.PlayersPart part, String keys) {
        List<DueChange> due = DueChange.chords(Progression.parse(chords, KEY), Beats.of(4), part);
        return HeardRound.of(due, played(keys), QUARTER, KEY);
    }

    private static List<String> faults(HeardRound round) {
        return round.changes().stream()
                .filter(change -> !change.isClean())
                .map(change -> change.inWords(1).toString())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Eb3+G3+Bb3@0 Ab3+C4+Eb4@4       |
            Eb4+G3+Bb5@0.1 C3+Ab4@3.9       |
            Eb3+G3+Bb3@0 Ab3+C4+Eb4@4.35    | Bar 2, beat 1: A♭ came late, by about a third of a beat.
            Eb3+G3+Bb3@0 Ab3+C4+Eb4@5       | Bar 2, beat 1: A♭ came late, by a beat or more.
            Eb3+G3+Bb3@-0.25 Ab3+C4+Eb4@4   | Bar 1, beat 1: E♭ came early, by about a quarter of a beat.
            Eb3+G3+Bb3@0 A3+C4+Eb4@4        | Bar 2, beat 1: A does not belong to A♭.
            Eb3+G3+Bb3@0 Ab3+B3+Eb4@4       | Bar 2, beat 1: C♭ does not belong to A♭.
            Eb3+G3+Bb3@0 Ab3+Eb4@4          | Bar 2, beat 1: C was missing in A♭.
            Eb3+G3+Bb3@0                    | Bar 2, beat 1: A♭ was not heard.
            Eb3+Bb3@0-2 G3@0.1 Ab3+C4@4     |
            Eb3+G3+Bb3@0-8 Ab3+C4@4         |
            Eb3+G3+Bb3@0 F5@2 G5@2.5 Ab3+C4+Eb4@4 D5@6 |
            """)
    void hearsTwoChords(String keys, String fault) {
        assertEquals(
                fault == null ? List.of() : List.of(fault),
                faults(heard("| Eb | Ab |", DueChange.PlayersPart.CHORDS, keys)));
    }

    /** Who plays the bass besides needs the root, too; a fifth that is perfect is no loss. */
    @ParameterizedTest
    @CsvSource({
        "HANDS, Eb2+G3@0, ''",
        "HANDS, G3+Bb3@0, 'Bar 1, beat 1: E♭ was missing in E♭.'",
        "CHORDS, G3+Bb3@0, ''",
        "BASS, Eb2@0, ''",
        "BASS, G2@0, 'Bar 1, beat 1: G does not belong to E♭.'"
    })
    void needsWhatThePlayerHas(DueChange.PlayersPart part, String keys, String fault) {
        assertEquals(fault.isEmpty() ? List.of() : List.of(fault), faults(heard("| Eb |", part, keys)));
    }

    /** One that stays where it is does not have to be struck again. */
    @Test
    void whatIsHeldCounts() {
        assertEquals(List.of(), faults(heard("| Eb . Eb . |", DueChange.PlayersPart.CHORDS, "Eb3+G3+Bb3@0-4")));
    }

    @Test
    void hearsATuneNoteByNote() {
        List<DueChange> due = DueChange.tune(Melody.parse("Bb3 | Eb4:1 F4:1/2 G4:1/2 Ab4:2"), Beats.of(4));
        HeardRound round = HeardRound.of(due, played("Eb4@0 F4@1 A4@1.5-1.9 Ab4@2"), QUARTER, KEY);
        assertEquals(List.of("Bar 1, beat 2 and: A does not belong to G."), faults(round));
        assertEquals(4, round.changes().size());
    }

    /** Keys of one chord never go down in one and the same millisecond: its time is that of its middle key. */
    @ParameterizedTest
    @ValueSource(doubles = {-60, -5, 0, 5, 42, 80})
    void tellsHowLateAChordIs(double late) {
        List<DueChange> due =
                DueChange.chords(Progression.parse("| Eb | Ab |", KEY), Beats.of(4), DueChange.PlayersPart.CHORDS);
        double at = 4 * QUARTER + late;
        List<KeyPress> keys =
                List.of(new KeyPress(56, at - 4, 9e9), new KeyPress(60, at, 9e9), new KeyPress(63, at + 3, 9e9));
        assertEquals(
                late, HeardRound.of(due, keys, QUARTER, KEY).changes().get(1).late(), 1e-9);
    }

    @Test
    void whatIsInTimeHangsOnThePace() {
        assertEquals(90, HeardRound.of(List.of(), List.of(), 300, KEY).tolerance());
        assertEquals(128, HeardRound.of(List.of(), List.of(), 800, KEY).tolerance(), 1e-9);
        assertEquals(160, HeardRound.of(List.of(), List.of(), 2000, KEY).tolerance());
    }

    @Test
    void theResultNamesBarsAndSaysHowWildItWas() {
        RoundResult one = RoundResult.heard(
                heard(
                        "| Eb | Ab | Bb7 | Eb |",
                        DueChange.PlayersPart.CHORDS,
                        "Eb3+G3@0 Ab3+C4@4.4 Bb3+D4+Ab3@8 Eb3+G3@12"),
                5);
        assertEquals(List.of(1), one.faults());
        assertEquals(
                "Bar 6, beat 1: A♭ came late, by about a third of a beat.",
                one.said().toString());
        RoundResult wild =
                RoundResult.heard(heard("| Eb | Ab | Bb7 | Eb |", DueChange.PlayersPart.CHORDS, "Eb3+G3@0 A3+D4@4"), 1);
        assertTrue(wild.isWild());
        RoundResult clean = RoundResult.heard(heard("| Eb |", DueChange.PlayersPart.CHORDS, "Eb3+G3@0"), 1);
        assertTrue(clean.isClean());
        assertEquals(1, clean.ease(), 1e-9);
    }
}
