package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.harmony.MusicText;
import monochord.harmony.voicing.Voicing;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Common practice, no source: what a keyboard player means by these words. */
class PatternTest {
    private static final TimedVoicing C_MAJOR = voicing("C3", "E4 G4 C5", "4");

    private static TimedVoicing voicing(String left, String right, String beats) {
        return new TimedVoicing(new Voicing(pitches(left), pitches(right)), Beats.parse(beats), "C");
    }

    private static List<Pitch> pitches(String text) {
        return Arrays.stream(text.split(" "))
                .filter(name -> !name.isEmpty())
                .map(Pitch::parse)
                .toList();
    }

    private static String played(Pattern pattern, BarGrid metre, TimedVoicing... voicings) {
        return pattern.of(List.of(voicings), metre).soundings().stream()
                .map(one -> one.start() + " " + one.pitch() + (one.hand() == Hand.LEFT ? "_" : "") + ":" + one.length())
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            block          | 0 C3_:4, 0 E4:4, 0 G4:4, 0 C5:4
            broken         | 0 C3_:4, 0 E4:1/2, 1/2 G4:1/2, 1 C5:1/2, 3/2 G4:1/2, 2 E4:1/2, 5/2 G4:1/2, 3 C5:1/2, 7/2 G4:1/2
            rolled         | 0 C3_:4, 1/12 E4:47/12, 1/6 G4:23/6, 1/4 C5:15/4
            bass-and-chord | 0 C3_:1, 1 E4:1/2, 1 G4:1/2, 1 C5:1/2, 2 C3_:1, 3 E4:1/2, 3 G4:1/2, 3 C5:1/2
            pulse          | 0 C3_:4, 0 E4:1, 0 G4:1, 0 C5:1, 1 E4:1, 1 G4:1, 1 C5:1, 2 E4:1, 2 G4:1, 2 C5:1, 3 E4:1, 3 G4:1, 3 C5:1
            """)
    void strikesABarOfC(String pattern, String notes) {
        assertEquals(notes, played(Pattern.parse(pattern), BarGrid.COMMON, C_MAJOR));
    }

    @Test
    void aWaltzHasOneBassInABar() {
        assertEquals(
                "0 C3_:1, 1 E4:1/2, 1 G4:1/2, 2 E4:1/2, 2 G4:1/2",
                played(Pattern.BASS_AND_CHORD, BarGrid.parse("3/4"), voicing("C3", "E4 G4", "3")));
    }

    @Test
    void aShortChordIsHalvedIntoBassAndChord() {
        assertEquals(
                "0 C3_:1/2, 1/2 E4:1/4, 1/2 G4:1/4",
                played(Pattern.BASS_AND_CHORD, BarGrid.COMMON, voicing("C3", "E4 G4", "1")));
    }

    @Test
    void oneHandAloneIsBrokenToo() {
        assertEquals(
                "0 C3_:1/2, 1/2 G3_:1/2, 1 C3_:1/2, 3/2 G3_:1/2",
                played(Pattern.BROKEN, BarGrid.COMMON, voicing("C3 G3", "", "2")));
        assertEquals("0 E4:2", played(Pattern.BASS_AND_CHORD, BarGrid.COMMON, voicing("", "E4", "2")));
    }

    /** Whatever the pattern, no chord is longer or shorter, none sounds into the next, and every key is played. */
    @ParameterizedTest
    @EnumSource(names = {"BLOCK", "BROKEN", "ROLLED", "BASS_AND_CHORD", "PULSE"})
    void keepsTimeAndNotes(Pattern pattern) {
        for (String chords : List.of("C F G7 Am", "| C . F | G | % |", "| Dm7 G7 C |", "| C F G Am Dm |")) {
            for (String metre : List.of("3/4", "4/4", "6/8", "5/4")) {
                Piece piece = Arrangement.piece(MusicText.read(chords, Key.parse("C")), BarGrid.parse(metre));
                Score score = piece.as(pattern, 1);
                assertEquals(piece.beats(), score.beats());
                Beats now = Beats.ZERO;
                for (TimedVoicing voicing : piece.voicings()) {
                    keeps(pattern, voicing, now, score);
                    now = now.plus(voicing.beats());
                }
            }
        }
    }

    private static void keeps(Pattern pattern, TimedVoicing voicing, Beats start, Score score) {
        Beats end = start.plus(voicing.beats());
        List<Sounding> within = score.soundings().stream()
                .filter(one -> one.start().compareTo(start) >= 0 && one.start().compareTo(end) < 0)
                .toList();
        within.forEach(one -> assertTrue(one.end().compareTo(end) <= 0));
        Map<Hand, List<Pitch>> keys = Map.of(
                Hand.LEFT, voicing.hands().left(), Hand.RIGHT, voicing.hands().right());
        keys.forEach((hand, pitches) -> {
            Set<Pitch> played = within.stream()
                    .filter(one -> one.hand() == hand)
                    .map(Sounding::pitch)
                    .collect(Collectors.toSet());
            assertTrue(pitches.containsAll(played), () -> pitches + " are held, " + played + " are played");
            assertTrue(pattern == Pattern.BROKEN || played.containsAll(pitches), () -> pattern + ": " + played);
        });
        assertEquals(start, within.get(0).start());
    }

    @Test
    void onlyWhatIsHeldIsPedalled() {
        assertEquals(
                List.of(Pattern.BLOCK, Pattern.BROKEN, Pattern.ROLLED, Pattern.BALLAD),
                Arrays.stream(Pattern.values()).filter(Pattern::isPedalled).toList());
        assertEquals(
                List.of(new Pedal(Beats.ZERO, Beats.of(4)), new Pedal(Beats.of(4), Beats.of(8))),
                Pattern.BROKEN.of(List.of(C_MAJOR, C_MAJOR), BarGrid.COMMON).pedals());
        assertTrue(Pattern.PULSE.of(List.of(C_MAJOR), BarGrid.COMMON).pedals().isEmpty());
    }

    @Test
    void readsWhatItWrites() {
        for (Pattern pattern : Pattern.values()) {
            assertEquals(pattern, Pattern.parse(pattern.toString()));
        }
        assertEquals(Pattern.BASS_AND_CHORD, Pattern.parse("Bass and chord"));
        assertEquals(
                "\"arpeggio\" is not a way to play chords: expected one of block, broken, rolled, "
                        + "bass-and-chord, pulse, waltz, ballad, off-beats, bossa, push, walking. Example: as broken",
                assertThrows(Unreadable.class, () -> Pattern.parse("arpeggio")).getMessage());
    }
}
