package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import monochord.score.Comping;
import monochord.score.Hand;
import monochord.score.HeldChord;
import monochord.score.Score;
import monochord.sound.file.MidiFile;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: Standard MIDI-File Format Spec. 1.1, International MIDI Association, for the bytes; MIDI 1.0 for note on 9n,
 * note off 8n, controller Bn, program Cn (from memory); middle C is 60.
 */
class PerformanceTest {
    private static MidiWalk.File file(Performance performance) throws IOException {
        return MidiWalk.through(MidiFile.bytes(performance.sequence()));
    }

    private static Score note(String pitch, String beats) {
        return Score.note(Pitch.parse(pitch), Beats.parse(beats));
    }

    private static HeldChord change(String label, String beats) {
        List<NoteName> tones =
                Arrays.stream(label.split(" ")).map(NoteName::parse).toList();
        return new HeldChord(
                tones.get(0), tones, Beats.parse(beats), tones.get(0).toString());
    }

    @Test
    void writesTwoHandsUnderTheirChordSymbols() throws IOException {
        Score score = Comping.of(List.of(change("C E G", "2"), change("Ab C Eb", "1")));
        MidiWalk.File file = file(Performance.of(score)
                .at(120)
                .with(Patch.parse("acoustic bass"), Patch.parse("harpsichord"))
                .in(Key.parse("Eb major")));

        assertEquals(1, file.format());
        assertEquals(480, file.division());
        assertEquals(3, file.trackCount());
        assertEquals(
                List.of(
                        "0: FF51 7 A1 20",
                        "0: FF58 4 2 18 8",
                        "0: FF59 FD 0",
                        "0: FF01 43",
                        "960: FF01 41 62",
                        "1440: FF2F"),
                file.track(0));
        assertEquals(
                List.of(
                        "0: C0 6",
                        "0: B0 7 50",
                        "0: 90 3C 42",
                        "0: 90 40 42",
                        "0: 90 43 50",
                        "945: 80 3C 0",
                        "960: 80 40 0",
                        "960: 80 43 0",
                        "960: 90 3C 42",
                        "960: 90 3F 42",
                        "960: 90 44 50",
                        "1440: 80 3C 0",
                        "1440: 80 3F 0",
                        "1440: 80 44 0",
                        "1440: FF2F"),
                file.track(1));
        assertEquals(
                List.of(
                        "0: C1 20",
                        "0: B1 7 50",
                        "0: 91 30 4A",
                        "960: 81 30 0",
                        "960: 91 2C 4A",
                        "1440: 81 2C 0",
                        "1440: FF2F"),
                file.track(2));
    }

    @Test
    void thirdsOfABeatFallExactly() throws IOException {
        Score triplet = note("C4", "1/3").then(note("D4", "1/3")).then(note("E4", "1/3"));
        assertEquals(
                List.of(
                        "0: C0 0",
                        "0: B0 7 50",
                        "0: 90 3C 50",
                        "160: 80 3C 0",
                        "160: 90 3E 50",
                        "320: 80 3E 0",
                        "320: 90 40 50",
                        "480: 80 40 0",
                        "480: FF2F"),
                file(Performance.of(triplet)).track(1));
    }

    @Test
    void aRepeatedNoteIsLetGoBeforeItIsStruckAgain() throws IOException {
        Score repeated = note("C4", "1").then(note("B#3", "1/32")).then(note("C4", "1"));
        assertEquals(
                List.of(
                        "0: 90 3C 50",
                        "465: 80 3C 0",
                        "480: 90 3C 50",
                        "492: 80 3C 0",
                        "495: 90 3C 50",
                        "975: 80 3C 0"),
                file(Performance.of(repeated)).track(1).subList(2, 8));
    }

    @Test
    void oneKeyStruckByTwoVoicesIsStruckOnce() throws IOException {
        Score unison = note("C4", "1").with(note("C4", "2"));
        assertEquals(
                List.of("0: 90 3C 50", "960: 80 3C 0", "960: FF2F"),
                file(Performance.of(unison)).track(1).subList(2, 5));
    }

    @Test
    void aRestAtTheEndIsHeldInTheFile() throws IOException {
        Score score = note("C4", "1").then(Score.rest(Beats.of(3)));
        List<String> frame = file(Performance.of(score)).track(0);
        assertEquals("1920: FF2F", frame.get(frame.size() - 1));
    }

    @Test
    void silenceIsAFileToo() throws IOException {
        MidiWalk.File file = file(Performance.of(Score.rest(Beats.of(1))));
        assertEquals(1, file.trackCount());
    }

    @Test
    void labelsAreWrittenInAscii() throws IOException {
        MidiWalk.File file = file(Performance.of(note("B3", "1").labelled("B♭maj7")));
        assertTrue(file.track(0).contains("0: FF01 42 62 6D 61 6A 37"), file.track(0)::toString);
    }

    @Test
    void aLeftHandAloneHasItsOwnChannel() throws IOException {
        MidiWalk.File file = file(Performance.of(note("C3", "1").by(Hand.LEFT)));
        assertEquals(2, file.trackCount());
        assertEquals("0: C1 0", file.track(1).get(0));
    }

    /** Flats count below zero, as two's complement in one byte; the second byte is 1 for minor. */
    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C major    | 0: FF59 0 0
            C# major   | 0: FF59 7 0
            Cb major   | 0: FF59 F9 0
            A minor    | 0: FF59 0 1
            Ab minor   | 0: FF59 F9 1
            G# minor   | 0: FF59 5 1
            D dorian   | 0: FF59 0 1
            """)
    void writesTheKeySignature(String key, String event) throws IOException {
        MidiWalk.File file = file(Performance.of(note("C4", "1")).in(Key.parse(key)));
        assertTrue(file.track(0).contains(event), file.track(0)::toString);
    }

    @Test
    void aKeyPastSevenSharpsHasNoSignature() throws IOException {
        MidiWalk.File file = file(Performance.of(note("C4", "1")).in(Key.parse("G# major")));
        assertFalse(file.track(0).toString().contains("FF59"));
    }

    /** Microseconds a quarter: 60,000,000 by the tempo, rounded, in three bytes. */
    @ParameterizedTest(name = "{0} a minute is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            20  | 0: FF51 2D C6 C0
            60  | 0: FF51 F 42 40
            84  | 0: FF51 A E6 2E
            120 | 0: FF51 7 A1 20
            300 | 0: FF51 3 D 40
            """)
    void writesTheTempo(int beatsPerMinute, String event) throws IOException {
        assertEquals(
                event,
                file(Performance.of(note("C4", "1")).at(beatsPerMinute))
                        .track(0)
                        .get(0));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"19", "301", "0", "-1"})
    void refusesATempoNobodyPlays(int beatsPerMinute) {
        Performance performance = Performance.of(note("C4", "1"));
        assertEquals(
                "tempo must be from 20 to 300 beats a minute, not " + beatsPerMinute,
                assertThrows(IllegalArgumentException.class, () -> performance.at(beatsPerMinute))
                        .getMessage());
    }

    @Test
    void refusesAPitchMidiDoesNotHave() {
        Performance performance = Performance.of(note("G#9", "1"));
        assertEquals(
                "G#9 lies outside the notes from C-1 to G9 of MIDI",
                assertThrows(IllegalArgumentException.class, performance::sequence)
                        .getMessage());
    }

    @Test
    void theSameScoreGivesTheSameBytes() throws IOException {
        Score score = Comping.of(List.of(change("F A C", "2"), change("C E G Bb D A", "4/3")));
        assertArrayEquals(
                MidiFile.bytes(Performance.of(score).sequence()),
                MidiFile.bytes(Performance.of(score).sequence()));
    }
}
