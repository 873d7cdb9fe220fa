package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.text.SafeText;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a learner's own folder holds may be damaged or gone, and the line goes on. */
@Tag("attack")
class HostileHomeTest {
    @TempDir
    private Path folder;

    private Run sits(Path home) {
        return new Run.Outside()
                .atHome(home)
                .inFolder(folder)
                .typing("ask scale-spelling of major in D\nD E F# G A B C#\nreview\nskip\nprogress\nlearn 1.1\n\n"
                        + "save evening --over\nopen draft\nsettings\nshow Ab\nquit\n")
                .run();
    }

    private static void holds(String what, Run run) {
        String said = run.out() + run.err();
        assertEquals(0, run.status(), what + ": " + said);
        assertFalse(said.contains("fault of ours"), what + ": " + said);
        assertTrue(run.out().contains("A♭  A♭ C E♭"), what + ": " + said);
        assertTrue(said.codePoints().allMatch(SafeText::isSafe), what);
    }

    @Test
    @DisplayName("each file of a learner's folder is damaged in turn, and the next sitting goes on")
    void anyFileMayBeDamaged() throws IOException {
        Path home = folder.resolve("home");
        holds("a sound home", sits(home));
        List<Path> files;
        try (Stream<Path> all = Files.walk(home)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        assertTrue(files.size() >= 3, files::toString);
        Random chance = new Random(20261201);
        for (Path file : files) {
            for (int time = 0; time < Thorough.times(2, 60); time++) {
                byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
                Files.createDirectories(file.getParent());
                Files.write(file, damaged(bytes, chance));
                holds(file + ", time " + time, sits(home));
            }
        }
    }

    private static byte[] damaged(byte[] bytes, Random chance) {
        byte[] damaged = java.util.Arrays.copyOf(
                bytes, chance.nextInt(3) == 0 ? chance.nextInt(bytes.length + 1) : bytes.length);
        for (int times = chance.nextInt(30); times > 0 && damaged.length > 0; times--) {
            damaged[chance.nextInt(damaged.length)] = (byte) chance.nextInt(256);
        }
        return damaged;
    }

    @Test
    @DisplayName("where the home cannot be made, all but keeping goes on")
    void noHome() throws IOException {
        Path file = Files.writeString(folder.resolve("nothing"), "a file where the folder should be");
        holds("a file in its place", sits(file.resolve("home")));
        Path folderItself = Files.createDirectories(folder.resolve("odd"));
        for (String name : List.of("record.db", "settings.properties", "agenda", "bookmarks", "set")) {
            Files.createDirectories(folderItself.resolve(name));
        }
        holds("folders in the place of files", sits(folderItself));
    }
}
