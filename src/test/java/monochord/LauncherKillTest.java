package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever part of a build is killed, the next start is whole, and no two builds run at once. */
@Tag("attack")
class LauncherKillTest {
    private static final String BUILDING = "monochord: building, which happens once and may take a minute.\n";
    private static final String WAITING = "monochord: another start is building, waiting.\n";

    @TempDir
    private Path base;

    private LaunchPad pad;

    @BeforeEach
    void setUp() throws IOException {
        assumeFalse(File.separatorChar == '\\', "SKIPPED on Windows: this launcher is for POSIX shells");
        pad = new LaunchPad(base);
    }

    private String failed() {
        return "monochord: the build failed; what Maven said is in " + pad.root + "/target/build.log.\n";
    }

    @ParameterizedTest(name = "at {0}")
    @DisplayName("a build whose start was killed goes on; the next start waits for it and uses it")
    @ValueSource(
            strings = {
                "compiling",
                "half a jar",
                "a jar without libraries",
                "half a library",
                "no list of libraries",
                "all but its own end"
            })
    void aBuildOutlivesItsStart(String step) throws Exception {
        pad.stayAt(step);
        var killed = pad.begin();
        pad.awaitStep(step, killed);
        killed.kill();
        pad.finish(killed);
        ProcessHandle maven = pad.holder();
        assertTrue(maven.isAlive());
        var next = pad.begin();
        if (!step.equals("all but its own end")) {
            next.awaitSaying(WAITING);
        }
        pad.goOnFrom(step);
        pad.assertWhole(pad.finish(next));
        pad.assertNothingLeft();
        assertEquals(1, pad.builds());
    }

    @ParameterizedTest(name = "at {0}")
    @DisplayName("where Maven was killed the start says that the build failed, and the next one builds anew")
    @ValueSource(
            strings = {"compiling", "half a jar", "a jar without libraries", "half a library", "no list of libraries"})
    void aKilledMavenIsAFailedBuild(String step) throws Exception {
        pad.stayAt(step);
        var start = pad.begin();
        pad.awaitStep(step, start);
        pad.holder().destroyForcibly();
        var run = pad.finish(start);
        assertEquals(BUILDING + failed(), run.said());
        assertEquals(3, run.status());
        assertEquals("", run.out());
        pad.goOnFrom(step);
        var next = pad.start();
        assertEquals(BUILDING, next.said());
        pad.assertWhole(next);
        assertEquals(2, pad.builds());
    }

    @ParameterizedTest(name = "at {0}")
    @DisplayName("where both were killed the next start builds anew")
    @ValueSource(
            strings = {"compiling", "half a jar", "a jar without libraries", "half a library", "no list of libraries"})
    void bothKilledLeaveNothing(String step) throws Exception {
        pad.stayAt(step);
        var start = pad.begin();
        pad.awaitStep(step, start);
        ProcessHandle maven = pad.holder();
        start.kill();
        maven.destroyForcibly();
        pad.finish(start);
        pad.goOnFrom(step);
        pad.assertWhole(pad.start());
        assertEquals(2, pad.builds());
    }

    @ParameterizedTest(name = "{1} move {0}")
    @DisplayName(
            "a start that was killed as it put the build, or then the archive, in place is made good by the next one")
    @CsvSource({"1, before", "1, behind", "2, before", "2, behind", "3, before", "3, behind", "4, before", "4, behind"})
    void aKillBetweenTwoMovesIsMadeGood(int move, String when) throws Exception {
        Path mv = pad.bin.resolve("mv");
        String moves = Files.readString(mv);
        Path count = Files.writeString(pad.base.resolve("count"), "");
        LaunchPad.script(mv, """
                #!/bin/sh
                echo >>"%1$s"
                last=$(wc -l <"%1$s")
                [ "$last" -ne %2$d ] || [ %3$s = behind ] || { kill -9 $PPID; exit 1; }
                %4$s
                [ "$last" -ne %2$d ] || kill -9 $PPID
                """.formatted(
                        count, move, when, moves.lines().toList().get(1).replace("exec ", "")));
        assertEquals("", pad.start().out());
        LaunchPad.script(mv, moves);
        pad.assertWhole(pad.start());
    }

    @Test
    @DisplayName("a build that replaces another is not started before it is whole")
    void aChangedBuildIsWholeToo() throws Exception {
        pad.start();
        Path tune = pad.root.resolve("src/main/java/Tune.java");
        Files.setLastModifiedTime(tune, FileTime.from(Instant.now().plusSeconds(1)));
        pad.stayAt("half a jar");
        var start = pad.begin();
        pad.awaitStep("half a jar", start);
        assertEquals("jar", Files.readString(pad.root.resolve("target/monochord.jar")));
        ProcessHandle maven = pad.holder();
        start.kill();
        maven.destroyForcibly();
        pad.finish(start);
        pad.goOnFrom("half a jar");
        Files.setLastModifiedTime(tune, FileTime.from(Instant.now().minusSeconds(60)));
        Files.setLastModifiedTime(tune.getParent(), FileTime.from(Instant.now().minusSeconds(60)));
        var next = pad.start();
        assertEquals(0, next.status(), next.err());
        assertTrue(next.usedArchive(), "the old jar is as good as it was");
        assertEquals(2, pad.builds());
    }

    @Test
    @DisplayName("ctrl-C ends the build, too")
    void theKeyboardEndsTheBuild() throws Exception {
        var deaf = pad.startFrom(pad.root, Path.of("sh"), "-c", "trap 'exit 9' INT; kill -INT $$; exit 0");
        assumeTrue(deaf.status() == 9, "SKIPPED: whoever runs these tests keeps ctrl-C from them");
        pad.stayAt("compiling");
        var start = pad.begin();
        pad.awaitStep("compiling", start);
        start.awaitSaying("monochord: building: compiling.\n"); // from there on it listens
        ProcessHandle maven = pad.holder();
        pad.finish(pad.begin(
                pad.root, List.of("sh", "-c", "kill -INT " + start.process().pid()), ""));
        assertEquals(130, pad.finish(start).status());
        maven.onExit().join();
        pad.goOnFrom("compiling");
        pad.assertWhole(pad.start());
    }

    // --- locks --------------------------------------------------------------

    @Test
    @DisplayName("of two first starts at once, one builds and the other says that it waits; both start")
    void twoFirstStartsBuildOnce() throws Exception {
        pad.stayAt("compiling");
        var one = pad.begin();
        var two = pad.begin();
        while (!(one.said() + two.said()).contains(WAITING)) {
            Thread.sleep(20);
        }
        pad.awaitStep("compiling", one);
        pad.goOnFrom("compiling");
        var first = pad.finish(one);
        var second = pad.finish(two);
        pad.assertWhole(first);
        pad.assertWhole(second);
        pad.assertNothingLeft();
        assertEquals(1, pad.builds());
        assertEquals(
                List.of(WAITING, BUILDING),
                List.of(first.said(), second.said()).stream().sorted().toList());
        assertTrue(first.usedArchive() && second.usedArchive());
    }

    @Test
    @DisplayName("a lock that a dead start left behind is broken, also where its number was given to another process")
    void breaksTheLockOfTheDead() throws Exception {
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        for (String holder :
                List.of(dead.pid() + " 1\n", ProcessHandle.current().pid() + " 1\n")) {
            Files.deleteIfExists(pad.root.resolve("target/stamp"));
            LaunchPad.write(pad.root.resolve("target/.building/holder"), holder);
            var run = pad.start();
            assertEquals(BUILDING, run.said());
            pad.assertWhole(run);
        }
        assertEquals(2, pad.builds());
    }

    @ParameterizedTest(name = "with {0}")
    @DisplayName("a lock that nobody signed, or nobody finished breaking, does not last")
    @CsvSource({"'', .building", "1 1, .building.breaking"})
    void anUnsignedLockDoesNotLast(String holder, String folder) throws Exception {
        Files.createDirectories(pad.root.resolve("target/.building"));
        Files.createDirectories(pad.root.resolve("target").resolve(folder));
        if (!holder.isEmpty()) {
            LaunchPad.write(pad.root.resolve("target/.building/holder"), holder + "\n");
        }
        LaunchPad.script(pad.bin.resolve("sleep"), "#!/bin/sh\n"); // the launcher counts its naps
        pad.assertWhole(pad.start());
    }
}
