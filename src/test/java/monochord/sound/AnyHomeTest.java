package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.score.Score;
import monochord.sound.file.WavFile;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A recording depends on nothing but what is played: not on whose machine it is. */
class AnyHomeTest {
    @TempDir
    Path folder;

    /** Records a chord, a bar counted in before it, with a sound we have and one we have not. */
    static final class Records {
        public static void main(String[] args) throws Exception {
            WavFile.write(chord(), Path.of(args[0]));
        }

        static Performance chord() {
            List<Pitch> keys = List.of(Pitch.parse("C3"), Pitch.parse("E4"), Pitch.parse("G4"));
            return Performance.of(Score.together(keys, Beats.ONE))
                    .at(240)
                    .with(Patch.PIANO, Patch.parse("oboe"))
                    .countedIn(true);
        }
    }

    private byte[] recorded(Path home) throws Exception {
        Path file = folder.resolve("sound.wav");
        Path output = folder.resolve("output");
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "--add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED",
                        "-Duser.home=" + home,
                        "-Djava.util.prefs.userRoot=" + home,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Records.class.getName(),
                        file.toString()))
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        assertEquals(0, process.waitFor(), () -> read(output));
        assertEquals("", read(output));
        return Files.readAllBytes(file);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (java.io.IOException unread) {
            return unread.toString();
        }
    }

    @Test
    void threeHomesGiveOneRecording() throws Exception {
        Path expected = folder.resolve("expected.wav");
        WavFile.write(Records.chord(), expected);
        Path fresh = Files.createDirectory(folder.resolve("fresh"));
        Path other = Files.createDirectory(folder.resolve("other"));
        Path cached = Files.createDirectories(folder.resolve("cached/.gervill")).getParent();
        Files.write(cached.resolve(".gervill/soundbank-emg.sf2"), TinyBank.file());
        for (Path home : List.of(fresh, other, cached)) {
            assertArrayEquals(Files.readAllBytes(expected), recorded(home), home::toString);
        }
        assertFalse(Files.exists(fresh.resolve(".gervill")), "no bank is drawn");
    }
}
