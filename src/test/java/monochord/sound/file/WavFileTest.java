package monochord.sound.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import monochord.score.Score;
import monochord.sound.Patch;
import monochord.sound.Performance;
import monochord.sound.Spectrum;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Source: frequencies of equal temperament from A4 = 440 Hz, ISO 16:1975; five cents as the least difference that
 * matters, common practice, no source. The header: WAVE, IBM and Microsoft, 1991.
 */
class WavFileTest {
    private static final int HEADER = 44;
    private static final String STEADY = "clarinet";

    private static final int CEILING = 26_029;

    private static final double C3 = 130.813;
    private static final double C4 = 261.626;
    private static final double E4 = 329.628;
    private static final double F4 = 349.228;
    private static final double FSHARP4 = 369.994;
    private static final double G4 = 391.995;
    private static final double A4 = 440.000;

    @TempDir
    Path folder;

    private byte[] wav(Sequence sequence) throws IOException {
        Path file = folder.resolve("sound.wav");
        WavFile.write(sequence, file);
        return Files.readAllBytes(file);
    }

    /** Four seconds of these notes at 60 beats a minute. */
    private static Sequence held(String patch, String... pitches) {
        List<Pitch> keys = Arrays.stream(pitches).map(Pitch::parse).toList();
        return Performance.of(Score.together(keys, Beats.of(4)))
                .at(60)
                .with(Patch.parse(patch))
                .sequence();
    }

    private Spectrum spectrum(String patch, String... pitches) throws IOException {
        byte[] wav = wav(held(patch, pitches));
        return new Spectrum(Spectrum.mono(Arrays.copyOfRange(wav, HEADER, wav.length), 0.5, 2.5));
    }

    private static void assertInTune(Spectrum spectrum, double hertz) {
        int cents = spectrum.centsOff(hertz);
        assertTrue(Math.abs(cents) <= 5, () -> cents + " cents from " + hertz + " Hz");
    }

    @Test
    void theATunesTo440() throws IOException {
        assertInTune(spectrum(STEADY, "A4"), A4);
        assertInTune(spectrum("piano", "A4"), A4);
    }

    @Test
    void aTriadHasItsThreeNotesAndNoOthers() throws IOException {
        Spectrum triad = spectrum(STEADY, "C4", "E4", "G4");
        for (double tone : List.of(C4, E4, G4)) {
            assertInTune(triad, tone);
            for (double silent : List.of(F4, FSHARP4, A4)) {
                assertTrue(triad.decibelsOver(tone, silent) > 40, () -> tone + " Hz beside " + silent + " Hz");
            }
        }
    }

    @Test
    void aLowCIsInTune() throws IOException {
        assertInTune(spectrum(STEADY, "C3"), C3);
    }

    @Test
    void theHeaderSaysWhatFollows() throws IOException {
        byte[] wav = wav(held("piano", "C4", "E4", "G4"));
        ByteBuffer header = ByteBuffer.wrap(wav).order(ByteOrder.LITTLE_ENDIAN);
        assertEquals("RIFF", text(wav, 0));
        assertEquals(wav.length - 8, header.getInt(4));
        assertEquals("WAVEfmt ", text(wav, 8) + text(wav, 12));
        assertEquals(16, header.getInt(16));
        assertEquals(1, header.getShort(20), "PCM");
        assertEquals(2, header.getShort(22), "channels");
        assertEquals(44_100, header.getInt(24), "frames a second");
        assertEquals(176_400, header.getInt(28), "bytes a second");
        assertEquals(4, header.getShort(32), "bytes a frame");
        assertEquals(16, header.getShort(34), "bits");
        assertEquals("data", text(wav, 36));
        assertEquals(wav.length - HEADER, header.getInt(40));
    }

    private static String text(byte[] bytes, int from) {
        return new String(bytes, from, 4, StandardCharsets.US_ASCII);
    }

    @Test
    void theSoundDiesAwayWithinTwoSecondsOfTheMusic() throws IOException {
        for (String patch : List.of("piano", STEADY, "tubular bells", "pad 8 (sweep)")) {
            byte[] wav = wav(held(patch, "C3", "C4", "G4"));
            double seconds = (wav.length - HEADER) / 176_400.0;
            assertTrue(seconds >= 4 && seconds <= 6, () -> patch + " lasts " + seconds + " s");
            double[] end = Spectrum.mono(Arrays.copyOfRange(wav, wav.length - 400, wav.length), 0, 100 / 44_100.0);
            assertTrue(Spectrum.loudest(end) < 200, () -> patch + " breaks off at " + Spectrum.loudest(end));
        }
    }

    @Test
    void aNoteStartsOnItsBeat() throws IOException {
        Score score = Score.rest(Beats.of(4, 3)).then(Score.note(Pitch.parse("C4"), Beats.ONE));
        byte[] wav = wav(Performance.of(score).at(120).sequence());
        double[] samples = Spectrum.mono(Arrays.copyOfRange(wav, HEADER, wav.length), 0, 1);
        int onset = 0;
        while (Math.abs(samples[onset]) < 50) {
            onset++;
        }
        assertEquals(0.667, onset / 44_100.0, 0.015, "four thirds of a beat at 120 beats a minute");
    }

    @Test
    void restsAtTheEndAreHeld() throws IOException {
        Score score = Score.note(Pitch.parse("C4"), Beats.ONE).then(Score.rest(Beats.of(9)));
        byte[] wav = wav(Performance.of(score).at(60).sequence());
        assertEquals(HEADER + 10 * 176_400, wav.length);
    }

    @Test
    void aWallOfSoundDoesNotClip() throws IOException, InvalidMidiDataException {
        for (String patch : List.of("electric piano 1", "church organ", "lead 2 (sawtooth)")) {
            byte[] wav = wav(wall(Patch.parse(patch)));
            int peak = 0;
            ByteBuffer samples = ByteBuffer.wrap(wav).order(ByteOrder.LITTLE_ENDIAN);
            for (int i = HEADER; i < wav.length; i += 2) {
                peak = Math.max(peak, Math.abs(samples.getShort(i)));
            }
            int loudest = peak;
            assertTrue(
                    loudest <= CEILING, () -> patch + " peaks at " + loudest + ", over two decibels below full scale");
            assertTrue(loudest > 10_000, () -> patch + " peaks at " + loudest + ", too soft to prove anything");
        }
    }

    /** Sixty keys down at once, as hard as can be, at full volume. */
    private static Sequence wall(Patch patch) throws InvalidMidiDataException {
        Sequence sequence = new Sequence(Sequence.PPQ, 480);
        Track track = sequence.createTrack();
        track.add(new MidiEvent(new ShortMessage(ShortMessage.PROGRAM_CHANGE, 0, patch.number() - 1, 0), 0));
        track.add(new MidiEvent(new ShortMessage(ShortMessage.CONTROL_CHANGE, 0, 7, 127), 0));
        for (int note = 36; note < 96; note++) {
            track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_ON, 0, note, 127), 0));
            track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_OFF, 0, note, 0), 960));
        }
        return sequence;
    }

    @Test
    void theSameSequenceGivesTheSameBytes() throws IOException {
        assertArrayEquals(wav(held("piano", "C4", "E4")), wav(held("piano", "C4", "E4")));
    }
}
