package monochord.harmony.voicing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.harmony.voicing.cost.Cost;
import monochord.harmony.voicing.cost.LowIntervalLimits;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each part of the formula, counted by hand. Source: the formula is our own, see {@link monochord.harmony.voicing.cost.VoicingWeights}. */
class CostTest {
    private static Cost cost(String style, String chords, String voicings) {
        List<Chord> row = Stream.of(chords.split(" ")).map(Chord::parse).toList();
        VoicingTask task =
                VoicingTask.of(row, Key.parse("C"), VoicingStyle.find(style).orElseThrow());
        return task.cost(Stream.of(voicings.split(" / ")).map(Voicing::parse).toList());
    }

    /** Motion, leaps, parallels, lost, unresolved, rough, mud, thickness, register, spacing. */
    @ParameterizedTest(name = "{1}, {0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            close  | C F      | C3 \\ E4 G4 C5 / F2 \\ F4 A4 C5    |  8 0   0 0  0    0 0 0  0 0
            close  | C F      | C3 \\ E4 G4 C5 / F3 \\ F4 A4 C5    |  8 0   0 0  0    0 0 0 15 0
            close  | C Dm     | C3 \\ G3 E4 C5 / D3 \\ A3 F4 A4    |  8 1  10 0  0    0 0 2  6 0
            spread | C Dm     | C3 G3 \\ E4 G4 / D3 A3 \\ D4 F4    |  8 0   5 0  0    0 0 2  6 0
            close  | G7 C     | G2 \\ F4 B4 D5 / C3 \\ E4 C5 E5    |  9 0   0 4  0    0 0 10 0 0
            close  | G7 C     | G2 \\ F4 G4 B4 / C3 \\ E4 G4 C5    |  7 0   0 0  0    0 0 4  0 0
            close  | G7 C     | G2 \\ F4 G4 B4 / C3 \\ G4 C5 E5    | 17 7  10 4 12    2 0 4  0 0
            close  | G7 C     | G2 \\ B3 F4 G4 / C3 \\ G3 E4 G4    | 10 0   0 0  0    0 0 6  0 2
            close  | C G C    | C3 \\ E4 G4 C5 / G3 \\ D4 G4 B4 / C3 \\ E4 G4 C5 | 16 0 0 0 0 0 0 0 7 0
            close  | C C      | C3 \\ E4 G4 C5 / C2 \\ E4 G4 C5    |  6 0   0 0  0    0 0 0  4 4
            choir  | C Dm     | C3 G3 \\ E4 C5 / D3 A3 \\ F4 A4    |  8 1 1000 0 0   0 0 2  4 0
            close  | C        | C3 \\ E3 G3 C4                     |  0 0   0 0  0    0 4 0  2 0
            close  | C        | C3 \\ E4 G4 E5                     |  0 0   0 0  0    0 0 6  0 0
            close  | C/E      | E2 \\ E4 G4 C5                     |  0 0   0 0  0    0 0 2  0 0
            close  | C7       | C3 \\ E4 Bb4 C5                    |  0 0   0 0  0    0 0 4  0 2
            with bass | Dm7 G7 | C4 E4 \\ F4 A4 / B3 D4 \\ F4 A4  |  3 0   0 0  0    0 0 0  1 2
            with bass | Dm7   | D4 F4 \\ A4 C5                      |  0 0   0 0  0    0 0 14 3 0
            """)
    void isCountedByHand(String style, String chords, String voicings, String parts) {
        Cost cost = cost(style, chords, voicings.replace('\\', '|').replace("||", "|"));
        assertEquals(
                parts.strip().replaceAll(" +", " "),
                cost.motion() + " " + cost.leaps() + " " + cost.parallels() + " " + cost.lost() + " "
                        + cost.unresolved() + " " + cost.rough() + " " + cost.mud() + " " + cost.thickness() + " "
                        + cost.register() + " "
                        + cost.spacing());
    }

    @Test
    @DisplayName("the whole is the sum of the parts")
    void theWholeIsTheSum() {
        assertEquals(55, new Cost(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).total());
        assertEquals(
                new Cost(2, 4, 6, 8, 10, 12, 14, 16, 18, 20),
                new Cost(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).plus(new Cost(1, 2, 3, 4, 5, 6, 7, 8, 9, 10)));
    }

    /** Source: low interval limits as music shops print them; a trade rule, not theory. */
    @ParameterizedTest(name = "{0} under {1} lies {2} half steps below its limit")
    @CsvSource({
        "E3, F3, 0",
        "Eb3, F3, 0",
        "C3, Eb3, 0",
        "B2, D#3, 0",
        "A2, D3, 0",
        "B1, F2, 0",
        "C#2, G#2, 0",
        "F2, Db3, 0",
        "F2, D3, 0",
        "F2, Eb3, 0",
        "F2, E3, 0",
        "C2, G2, 1",
        "C2, E2, 11",
        "C3, G3, -11"
    })
    void limits(String lower, String upper, int below) {
        assertEquals(
                below,
                LowIntervalLimits.below(
                        Pitch.parse(lower).midiNumber(), Pitch.parse(upper).midiNumber()));
    }

    @ParameterizedTest(name = "reach {0} covers {1} half steps, {2}")
    @CsvSource({
        "5, 7, a fifth",
        "6, 9, a sixth",
        "7, 11, a seventh",
        "8, 12, an octave",
        "9, 14, a ninth",
        "10, 16, a tenth",
        "11, 17, an eleventh",
        "12, 19, a twelfth"
    })
    void reach(String text, int halfSteps, String words) {
        Reach reach = Reach.parse(text);
        assertEquals(halfSteps, reach.halfSteps());
        assertEquals(words, reach.inWords().toString());
        assertEquals(text, reach.toString());
    }

    @Test
    @DisplayName("the tune lies on top at each chord, and the rest of the chord lies under it")
    void theTuneLiesOnTop() {
        Progression progression = Progression.parse("C F G C", Key.parse("C"));
        Melody tune = Melody.parse("G4:2 A4:1 F4:1 r:2 E5:2");
        for (VoicingStyle style : VoicingStyle.values()) {
            VoicingTask task = VoicingTask.of(progression, style, tune);
            assertEquals(
                    List.of("G4", "A4", "", "E5"),
                    task.tops().stream()
                            .map(top -> top.map(Pitch::toString).orElse(""))
                            .toList());
            List<Voicing> voicings = VoicingSearch.best(task).voicings();
            assertEquals(
                    List.of("G4", "A4", "E5"),
                    Stream.of(0, 1, 3)
                            .map(i -> voicings.get(i).top().toString())
                            .toList());
        }
    }

    @Test
    @DisplayName("a note of the tune from outside the chord lies on top alone")
    void aForeignNoteLiesOnTopAlone() {
        VoicingTask task = VoicingTask.of(List.of(Chord.parse("C")), Key.parse("C"), VoicingStyle.CLOSE)
                .under(List.of(Optional.of(Pitch.parse("D5"))));
        Voicing voicing = VoicingSearch.best(task).voicings().get(0);
        assertEquals("D5", voicing.top().toString());
        assertEquals(
                1,
                voicing.pitches().stream()
                        .filter(pitch -> pitch.name().toString().equals("D"))
                        .count());
    }

    @Test
    @DisplayName(
            "root position moves to the nearest root, and stays in the middle of the keyboard however long it goes on")
    void rootPosition() {
        List<Chord> row =
                Stream.of("F", "C", "G", "Ab", "C/E", "Fmaj7").map(Chord::parse).toList();
        assertEquals(
                "F3 | F4 A4 C5, C3 | C4 E4 G4, G2 | G3 B3 D4, Ab2 | Ab3 C4 Eb4, E2 | C4 E4 G4, F3 | F4 A4 C5 E5",
                RootPositions.of(row).stream().map(Voicing::toString).collect(Collectors.joining(", ")));
        List<Chord> up = Stream.iterate(Chord.parse("C"), chord -> chord.plus(Interval.MAJOR_SECOND))
                .limit(40)
                .toList();
        assertEquals(
                40,
                RootPositions.of(up).stream()
                        .filter(voicing -> voicing.top().midiNumber() < 84)
                        .count());
    }

    @Test
    @DisplayName("a voicing reads what it writes")
    void reads() {
        assertEquals("F2 C3 | A3 C4", Voicing.parse("F2 C3 | A3 C4").toString());
        assertEquals("Ab2 | C4 Eb4", Voicing.parse("ab2|Eb4, C4").toString());
        assertEquals("A♭2 | C4 E♭4", Voicing.parse("A♭2 | C4 E♭4").write(Signs.MUSIC));
    }
}
