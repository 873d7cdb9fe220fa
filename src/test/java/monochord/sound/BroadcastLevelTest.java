package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.Thorough;
import monochord.harmony.MusicText;
import monochord.practice.skill.Skills;
import monochord.score.Arrangement;
import monochord.score.Piece;
import monochord.shell.playback.Hearing;
import monochord.sound.file.Mp3;
import monochord.sound.file.WavFile;
import monochord.theory.Key;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Recordings as somebody else measures them: ffmpeg's filter {@code ebur128}. -18 LUFS within 1 LU, and a true peak under
 * -1 dBTP (EBU R 128, 2020).
 */
class BroadcastLevelTest {
    private static final Key C = Key.parse("C");

    @TempDir
    Path folder;

    private static Piece piece(String text) {
        return Arrangement.piece(MusicText.read(text, C));
    }

    private static Performance played(String text, Directions directions) {
        return directions.perform(piece(text), C);
    }

    private static Map<String, Performance> scores() {
        Directions usual = Directions.USUAL;
        Patch strings = Patch.parse("strings");
        Map<String, Performance> scores = new LinkedHashMap<>();
        scores.put("progression", played("F C G Ab", usual));
        scores.put("strings", played("Fmaj9 C6/9 Gsus4 Abmaj9", usual.with(strings, strings)));
        scores.put(
                "interval",
                Hearing.of(Skills.find("ear-interval")
                        .orElseThrow()
                        .question(C, 3)
                        .heard()
                        .orElseThrow()));
        scores.put(
                "comparison",
                Comparison.of(List.of(piece("F C G Ab"), piece("C4 D4 E4 F4")), usual, C)
                        .inTurn());
        scores.put("tune", played("E4 F4 G4 E4 D4 C4", usual.countedIn(true)));
        scores.put("bass", played("C2 E2 G2", usual.with(Patch.parse("acoustic bass"), Patch.PIANO)));
        return scores;
    }

    @Test
    void recordingsAreAsLoudAsPromised() throws IOException, InterruptedException {
        for (Map.Entry<String, Performance> score : Thorough.spread(List.copyOf(scores().entrySet()), 3, 0)) {
            Path wav = folder.resolve(score.getKey() + ".wav");
            WavFile.write(score.getValue(), wav);
            assertLevel(wav);
            assertLevel(Files.write(folder.resolve(score.getKey() + ".mp3"), Mp3.of(score.getValue())));
        }
    }

    private static void assertLevel(Path recording) throws IOException, InterruptedException {
        String said = measured(recording);
        double lufs = last("I:\\s+(-?[0-9.]+) LUFS", said);
        double peak = last("Peak:\\s+(-?[0-9.]+) dBFS", said);
        assertTrue(Math.abs(lufs + 18) <= 1, () -> recording.getFileName() + " is at " + lufs + " LUFS");
        assertTrue(peak < -1, () -> recording.getFileName() + " peaks at " + peak + " dBTP");
    }

    private static String measured(Path recording) throws IOException, InterruptedException {
        Path said = Files.createTempFile("ffmpeg", ".txt");
        ProcessBuilder command = new ProcessBuilder(
                "ffmpeg",
                "-nostdin",
                "-nostats",
                "-i",
                recording.toString(),
                "-filter_complex",
                "ebur128=peak=true",
                "-f",
                "null",
                "-");
        try {
            int status = command.redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start()
                    .waitFor();
            assertTrue(status == 0, () -> "ffmpeg ended with status " + status);
            return Files.readString(said);
        } catch (IOException missing) {
            String message = "NOT CHECKED by ffmpeg: it is not on the path. Install it to have loudness checked.";
            System.err.println(message);
            return Assumptions.abort(message);
        } finally {
            Files.delete(said);
        }
    }

    private static double last(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        double found = Double.NaN;
        while (matcher.find()) {
            found = Double.parseDouble(matcher.group(1));
        }
        return found;
    }
}
