package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.sound.midi.Sequence;
import monochord.Thorough;
import monochord.harmony.MusicText;
import monochord.score.Arrangement;
import monochord.score.Pattern;
import monochord.sound.file.WavFile;
import monochord.sound.level.Limiter;
import monochord.sound.level.LoudnessMeter;
import monochord.sound.level.LoudnessTarget;
import monochord.sound.play.Outcome;
import monochord.sound.play.Player;
import monochord.theory.Key;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How loud things come out: measured by our own meter, which is held to the broadcasters' signals. */
class LoudnessTest {
    private static final Key C = Key.parse("C");

    @TempDir
    Path folder;

    @AfterEach
    void pullTheCardOut() {
        CaptureMixerProvider.pullOut();
    }

    private static Performance performance(String music, String patch, int times) {
        Patch both = Patch.parse(patch);
        return Directions.USUAL.with(both, both).times(times).perform(Arrangement.piece(MusicText.read(music, C)), C);
    }

    private static double whole(Sequence sequence) throws IOException {
        LoudnessMeter meter = new LoudnessMeter(JavaSound.RATE);
        float[] piece = new float[1 << 14];
        try (Rendering rendering = Rendering.of(sequence, Optional.empty())) {
            long left = 2 * JavaSound.frames(sequence);
            for (int read = rendering.read(piece); read > 0 && left > 0; read = rendering.read(piece)) {
                for (int i = 0; i < Math.min(read, left); i += 2) {
                    meter.add(piece[i], piece[i + 1]);
                }
                left -= read;
            }
        }
        return meter.lufs();
    }

    /** Source: less than a decibel is hardly heard as a difference; common practice, no source. The music is ours. */
    @Thorough.FirstOf(2)
    @ParameterizedTest(name = "{0} on {1}, {2} times")
    @CsvSource(delimiter = '|', textBlock = """
            F C G Ab                          | piano             | 1
            F C G Ab                          | piano             | 8
            F C G Ab                          | electric piano 1  | 1
            F C G Ab                          | vibraphone        | 1
            F C G Ab                          | organ             | 1
            F C G Ab                          | acoustic guitar   | 1
            F C G Ab                          | acoustic bass     | 1
            F C G Ab                          | strings           | 1
            F C G Ab                          | choir             | 1
            F C G Ab                          | brass section     | 1
            F C G Ab                          | clarinet          | 1
            F C G Ab                          | flute             | 1
            Fmaj9 C6/9 Gsus4 Abmaj9           | piano             | 2
            C4                                | piano             | 1
            E6 G6 C7                          | piano             | 1
            C2 E2 G2                          | piano             | 1
            E4 F4 G4 E4 D4 C4                 | piano             | 3
            """)
    void isKnownBeforeItIsHeard(String music, String patch, int times) throws IOException {
        Performance performance = performance(music, patch, times);
        assertEquals(whole(performance.sequence()), Loudness.of(performance), 0.7);
    }

    @ParameterizedTest
    @ValueSource(strings = {"F C G Ab", "C4", "| C13 F13 | G13 C13 |", "E5 F5 G5 E5"})
    void whatTheCardGetsIsAtTheLevel(String music) throws Exception {
        CaptureMixerProvider.plugIn("free");
        CaptureLine.forget();
        Performance performance = Directions.USUAL
                .at(160)
                .as(Pattern.BROKEN)
                .countedIn(true)
                .perform(Arrangement.piece(MusicText.read(music, C)), C);
        try (Player player = new Player()) {
            assertEquals(Outcome.SOUNDING, player.play(performance).ended().join());
        }
        assertAtTheLevel(CaptureLine.heard(), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"F C G Ab", "C4", "| C13 F13 | G13 C13 |"})
    void whatIsRecordedIsAtTheLevel(String music) throws IOException {
        Path file = folder.resolve("sound.wav");
        WavFile.write(performance(music, "piano", 1), file);
        assertAtTheLevel(Files.readAllBytes(file), 44);
    }

    private static void assertAtTheLevel(byte[] sound, int from) {
        LoudnessMeter meter = new LoudnessMeter(JavaSound.RATE);
        float peak = 0;
        for (int i = from; i < sound.length; i += 4) {
            float left = (short) (sound[i + 1] << 8 | sound[i] & 0xFF) / 32_768f;
            float right = (short) (sound[i + 3] << 8 | sound[i + 2] & 0xFF) / 32_768f;
            meter.add(left, right);
            peak = Math.max(peak, Math.max(Math.abs(left), Math.abs(right)));
        }
        assertEquals(LoudnessTarget.LUFS, meter.lufs(), 1);
        assertTrue(peak <= Limiter.CEILING, "peak " + peak);
    }

    /** Sixty keys at once, as hard as can be, and one key, softly. */
    @Test
    void neitherTheLoudestNorTheSoftestIsFarOff() throws Exception {
        for (int[] keysAndVelocity : List.of(new int[] {60, 127}, new int[] {1, 20})) {
            Sequence sequence = new Sequence(Sequence.PPQ, 480);
            var track = sequence.createTrack();
            for (int key = 36; key < 36 + keysAndVelocity[0]; key++) {
                Sequencing.add(track, 0, Sequencing.message(0x90, 0, key, keysAndVelocity[1]));
                Sequencing.add(track, 1920, Sequencing.message(0x80, 0, key, 0));
            }
            Path file = folder.resolve("sound.wav");
            WavFile.write(sequence, file);
            assertAtTheLevel(Files.readAllBytes(file), 44);
        }
    }
}
