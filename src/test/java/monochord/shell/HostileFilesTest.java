package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.Thorough;
import monochord.shell.HostileFiles.Damage;
import monochord.shell.HostileFiles.Format;
import monochord.shell.HostileFiles.HostileFile;
import monochord.text.SafeText;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Lessons, notebooks, songs, sheets plain and packed, ABC, charts in text and sound banks, damaged in ten ways, go through every
 * verb that reads them: each is read or refused in a message of bearable length, nothing of it steers a terminal, and the next
 * line is answered. In {@code mvn verify} {@value #SHORT} of each format, in the whole {@value #WHOLE} in each way.
 */
@Tag("attack")
class HostileFilesTest {
    private static final long SEED = 20261201;
    private static final int WHOLE = 10;
    private static final int SHORT = 2;
    private static final ThreadMXBean PROCESSOR = ManagementFactory.getThreadMXBean();
    private static final long LONG_NANOS = 1_000_000_000L;
    private static final int LONGEST_LINE = 2_000;
    /** Beside what a file holds itself, of which opening shows all through a pipe. */
    private static final int MOST_SAID = 100_000;

    @TempDir
    private Path folder;

    private static List<String> lines(Format format, String name) {
        List<String> lines = new ArrayList<>();
        switch (format) {
            case LESSON -> lines.addAll(List.of("check NAME", "publish NAME --html out.html --over"));
            case NOTEBOOK -> lines.addAll(List.of("open NAME", "replay NAME", "publish NAME --html out.html --over"));
            case BANK -> lines.addAll(List.of("bank NAME", "play C --wav out.wav --over", "bank own"));
            case SONG, TUNES, CHART -> {}
            default ->
                lines.addAll(
                        List.of("fit --file NAME", "key --file NAME", "recolour --file NAME", "harmonise --file NAME"));
        }
        if (format != Format.BANK) {
            lines.addAll(List.of(
                    "song NAME",
                    "song",
                    "song --abc out.abc --over",
                    "song --out out.md --over",
                    "chart --html c.html --over"));
        }
        lines.addAll(List.of("skip", "show Ab"));
        return lines.stream().map(line -> line.replace("NAME", name)).toList();
    }

    private Run read(HostileFile file) throws IOException {
        Files.write(folder.resolve(file.name()), file.bytes());
        String typed = String.join("\n", lines(file.format(), file.name())) + "\nquit\n";
        return new Run.Outside().inFolder(folder).typing(typed).run();
    }

    private static List<String> wrong(HostileFile file, Run run) {
        List<String> wrong = new ArrayList<>();
        String said = run.out() + run.err();
        if (run.status() != 0) {
            wrong.add("ends with " + run.status());
        }
        if (said.contains("a fault of ours") || said.contains("Exception") || said.contains("was given up")) {
            wrong.add("a fault: "
                    + said.lines()
                            .filter(line -> line.contains("fault of ours")
                                    || line.contains("given up")
                                    || line.contains("Exception"))
                            .toList());
        }
        if (!run.out().contains("A♭  A♭ C E♭")) {
            wrong.add("the next line is not answered");
        }
        if (!said.codePoints().allMatch(SafeText::isSafe)) {
            wrong.add("steers the terminal");
        }
        int longest = said.lines().mapToInt(String::length).max().orElse(0);
        if (longest > LONGEST_LINE || said.length() > MOST_SAID + 2 * file.bytes().length) {
            wrong.add("says too much: a line of " + longest + ", " + said.length() + " in all");
        }
        return wrong.stream().map(what -> file + ": " + what).toList();
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("whatever a file holds, it is read or refused and the next line is answered")
    void everyFileIsReadOrRefused(Format format) throws IOException {
        List<HostileFile> files = Thorough.spread(HostileFiles.of(format, SEED, WHOLE), SHORT, format.ordinal());
        assertEquals(Thorough.times(SHORT, WHOLE * Damage.values().length), files.size());
        List<String> wrong = new ArrayList<>();
        for (HostileFile file : files) {
            wrong.addAll(watched(file));
        }
        assertEquals(List.of(), wrong);
    }

    /** What is wrong, and in the whole what takes more than a second of the processor. */
    private List<String> watched(HostileFile file) throws IOException {
        long before = PROCESSOR.getCurrentThreadCpuTime();
        List<String> wrong = wrong(file, read(file));
        long taken = PROCESSOR.getCurrentThreadCpuTime() - before;
        if (taken > LONG_NANOS) {
            System.out.println(file + " took " + taken / 1_000_000 + " ms of the processor");
        }
        return wrong;
    }

    @Test
    @DisplayName("the same seed gives the same files")
    void theFilesCanBeMadeAgain() {
        List<HostileFile> once = HostileFiles.of(Format.TUNES, 7, 1);
        List<HostileFile> again = HostileFiles.of(Format.TUNES, 7, 1);
        for (int i = 0; i < once.size(); i++) {
            assertArrayEquals(
                    once.get(i).bytes(), again.get(i).bytes(), once.get(i).toString());
        }
    }
}
