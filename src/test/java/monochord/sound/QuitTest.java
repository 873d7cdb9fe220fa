package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.score.Score;
import monochord.sound.play.Outcome;
import monochord.sound.play.Player;
import monochord.sound.play.Playing;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only a process of its own can show: that it ends while music plays, what it loads, what it says by itself. */
class QuitTest {
    @TempDir
    Path home;

    /** Starts to play a minute of music, and comes to the end of main without closing anything. */
    static final class PlaysAndQuits {
        public static void main(String[] args) {
            Score score = Score.note(Pitch.parse("A4"), Beats.of(60));
            Playing playing = new Player().play(Performance.of(score).at(60).sequence());
            System.out.println(playing.started().join());
        }
    }

    /** What the prompt does while nobody plays. */
    static final class NeverPlays {
        public static void main(String[] args) {
            Player player = new Player();
            player.stop();
            System.out.println(Player.class.getName() + " " + Patch.parse("piano") + " " + Outcome.NO_CARD.reason());
            player.close();
        }
    }

    private List<String> run(Class<?> program, String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "--add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED",
                "-Duser.home=" + home,
                "-Djava.util.prefs.userRoot=" + home,
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(options));
        command.add(program.getName());
        Path output = home.resolve("output");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        try {
            assertEquals(0, process.waitFor());
            return Files.readAllLines(output, StandardCharsets.UTF_8);
        } finally {
            process.destroyForcibly();
        }
    }

    @Test
    void aProgramEndsWhileMusicPlaysAndNothingIsSaidThatNobodyAsked() throws Exception {
        String choice = "-Djavax.sound.sampled.SourceDataLine=" + CaptureMixerProvider.class.getName() + "#Capture";
        assertEquals(
                List.of("SOUNDING"), run(PlaysAndQuits.class, "-D" + CaptureMixerProvider.PROPERTY + "=free", choice));
    }

    @Test
    void nothingOfTheSynthesizerIsLoadedBeforeItIsNeeded() throws Exception {
        String log = String.join("\n", run(NeverPlays.class, "-Xlog:class+load", "-Xshare:off"));
        assertTrue(log.contains("monochord.sound.play.Player "), "the log tells what is loaded");
        assertFalse(
                log.contains("javax.sound"),
                () -> log.lines()
                        .filter(line -> line.contains("javax.sound"))
                        .toList()
                        .toString());
    }
}
