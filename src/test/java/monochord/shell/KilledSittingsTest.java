package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.Thorough;
import monochord.practice.mastery.Attempt;
import monochord.record.Register;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several whole programs, each killed without a chance to tidy up in the middle of its questions. */
@Tag("attack")
class KilledSittingsTest {
    private static final int SITTINGS = Thorough.times(2, 20);
    private static final List<String> NOTES = List.of("C", "Db", "D", "Eb", "E", "F", "Gb", "G", "Ab", "A", "Bb", "B");

    @TempDir
    private Path home;

    private Process program() throws IOException {
        ProcessBuilder program = new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmn8m",
                "-XX:-UsePerfData",
                "-Dmonochord.terminals=",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName());
        program.environment().put("MONOCHORD_HOME", home.toString());
        program.environment().put("MONOCHORD_LESSONS", Run.OUR_LESSONS.toString());
        return program.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    }

    /** What is typed in the sitting with this number: one question, and an answer that only this sitting gives. */
    private static String lines(int sitting, int answers) {
        StringBuilder lines = new StringBuilder("ask scale-spelling of C major\n");
        for (int i = 0; i < answers; i++) {
            lines.append(answer(sitting, i)).append('\n');
        }
        return lines.toString();
    }

    private static String answer(int sitting, int i) {
        return "D " + NOTES.get(sitting % 12) + " " + NOTES.get(sitting / 12) + " " + NOTES.get(i % 12) + " "
                + NOTES.get(i / 12);
    }

    /** Answers until so many verdicts were seen, and is killed there, with more already on its way. */
    private List<String> judged(int sitting, int verdicts) throws IOException, InterruptedException {
        Process program = program();
        OutputStream keys = program.getOutputStream();
        keys.write(lines(sitting, verdicts + 5).getBytes(StandardCharsets.UTF_8));
        keys.flush();
        List<String> seen = new ArrayList<>();
        try (BufferedReader screen = program.inputReader(StandardCharsets.UTF_8)) {
            while (seen.size() < verdicts) {
                String line = screen.readLine();
                assertTrue(line != null, "it ended by itself after " + seen);
                if (line.startsWith("Try again")) {
                    seen.add(answer(sitting, seen.size()));
                }
            }
            program.destroyForcibly();
        }
        program.waitFor();
        return seen;
    }

    @Test
    void nothingThatWasJudgedIsLost() throws IOException, InterruptedException {
        List<String> seen = new ArrayList<>();
        for (int sitting = 0; sitting < SITTINGS; sitting++) {
            seen.addAll(judged(sitting, 1 + sitting * 2));
        }
        List<String> kept = new ArrayList<>();
        try (Register register = new Register(home)) {
            register.attempts((Attempt attempt) -> kept.add(attempt.answer()));
            assertEquals(List.of(), register.notice());
        }
        assertEquals(SITTINGS * SITTINGS, seen.size());
        assertEquals(
                List.of(),
                seen.stream().filter(answer -> !kept.contains(answer)).toList(),
                "judged and lost");
        assertEquals(kept.size(), kept.stream().distinct().count(), "none is kept twice");
    }
}
