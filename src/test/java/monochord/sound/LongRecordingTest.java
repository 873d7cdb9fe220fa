package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import monochord.score.Score;
import monochord.sound.file.WavFile;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is long is written a little at a time: the heap of the program that writes it is a third of what it writes. */
class LongRecordingTest {
    private static final int MINUTES = 5;
    private static final int HEADER_BYTES = 44;
    private static final long BYTES_PER_MINUTE = 60 * 176_400L;

    @TempDir
    Path folder;

    /** Writes five minutes, a note to a bar, to the file that is named first. */
    static final class Writes {
        public static void main(String[] args) throws Exception {
            Score bar = Score.note(Pitch.parse("A4"), Beats.ONE).then(Score.rest(Beats.of(3)));
            Score song = new Score.InTurn(Collections.nCopies(MINUTES * 15, bar));
            WavFile.write(Performance.of(song).at(60).sequence(), Path.of(args[0]));
        }
    }

    @Test
    void fiveMinutesNeedNoMoreMemoryThanOne() throws Exception {
        Path file = folder.resolve("long.wav");
        Path output = folder.resolve("output");
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx32m",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "--add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED",
                        "-Duser.home=" + folder,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writes.class.getName(),
                        file.toString()))
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        try {
            int status = process.waitFor();
            assertEquals("", Files.readString(output));
            assertEquals(0, status);
        } finally {
            process.destroyForcibly();
        }
        assertEquals(HEADER_BYTES + MINUTES * BYTES_PER_MINUTE, Files.size(file));
    }
}
