package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How the launcher builds: whatever is killed, cut or deleted, the next start is whole or says what to do. */
class LauncherBuildTest {
    private static final String BUILDING = "monochord: building, which happens once and may take a minute.\n";
    private static final String WAITING = "monochord: another start is building, waiting.\n";
    private static final String CHANGED = "monochord: the sources have changed, building again.\n";
    private static final String DAMAGED =
            "monochord: a file of the last build is missing or damaged, building again.\n";

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

    // --- killed -------------------------------------------------------------

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

    // --- what is built again --------------------------------------------------

    @Test
    @DisplayName("a build that fails names its log, leaves no lock, and the next start tries again")
    void aFailedBuildNamesItsLog() throws Exception {
        Path broken = Files.createFile(pad.root.resolve("broken"));
        Path log = pad.root.resolve("target/build.log");
        var failed = pad.start();
        assertEquals(BUILDING + failed(), failed.said());
        assertEquals(3, failed.status());
        assertEquals("no such semicolon\n", Files.readString(log));
        assertFalse(Files.exists(pad.root.resolve("target/.building")));
        Files.delete(broken);
        pad.assertWhole(pad.start());
    }

    @Test
    @DisplayName("changed sources that cannot be built are no reason to start what was built before them")
    void theOldJarIsNotStartedForTheNew() throws Exception {
        pad.start();
        Files.setLastModifiedTime(
                pad.root.resolve("pom.xml"), FileTime.from(Instant.now().plusSeconds(1)));
        Files.createFile(pad.root.resolve("broken"));
        var run = pad.start();
        assertEquals(CHANGED + failed(), run.said());
        assertEquals(3, run.status());
        assertEquals("", run.out());
    }

    @Test
    @DisplayName("a source that is newer than the jar, or is gone, is a reason to build again")
    void newerSourcesAreBuilt() throws Exception {
        pad.start();
        Path tune = pad.root.resolve("src/main/java/Tune.java");
        Files.setLastModifiedTime(tune, FileTime.from(Instant.now().plusSeconds(1)));
        assertEquals(CHANGED, pad.start().said());
        Files.setLastModifiedTime(tune, FileTime.from(Instant.now().minusSeconds(60)));
        pad.start();
        long before = pad.builds();
        Files.delete(tune);
        pad.start();
        assertEquals(before + 1, pad.builds());
    }

    @Test
    @DisplayName("the build says what it is doing while it does it")
    void saysWhatItIsDoing() throws Exception {
        pad.stayAt("compiling");
        var start = pad.begin();
        start.awaitSaying(BUILDING + "monochord: building: compiling.\n");
        start.awaitSaying("monochord: building: still compiling.\n");
        pad.goOnFrom("compiling");
        var run = pad.finish(start);
        assertEquals(
                BUILDING + "monochord: building: compiling.\nmonochord: building: making later starts quick.\n",
                run.err().replace("monochord: building: still compiling.\n", ""));
    }

    @ParameterizedTest(name = "{0} {1}")
    @DisplayName("a file that is missing, or has another size, is a reason to build again")
    @CsvSource({
        "deleted, lib/chords.jar",
        "cut, lib/chords.jar",
        "deleted, lib/tunes.jar",
        "cut, lib/tunes.jar",
        "deleted, monochord.jar",
        "cut, monochord.jar",
        "grown, monochord.jar"
    })
    void aDamagedBuildIsBuiltAgain(String damage, String name) throws Exception {
        pad.start();
        damage(damage, pad.root.resolve("target").resolve(name));
        var run = pad.start();
        assertEquals(DAMAGED, run.said());
        pad.assertWhole(run);
        assertEquals(2, pad.builds());
    }

    private static void damage(String damage, Path file) throws IOException {
        FileTime time = Files.getLastModifiedTime(file);
        String text = Files.readString(file);
        if (damage.equals("deleted")) {
            Files.delete(file);
            return;
        }
        Files.writeString(file, damage.equals("cut") ? text.substring(1) : text + " ");
        Files.setLastModifiedTime(file, time);
    }

    @Test
    @DisplayName("a stamp that is empty or says nothing true vouches for no build")
    void aDamagedStampVouchesForNothing() throws Exception {
        for (String text : List.of("", "\n", "3 no such file.jar\n", "\0\0\0")) {
            pad.start();
            Files.writeString(pad.root.resolve("target/stamp"), text);
            var run = pad.start();
            assertEquals(DAMAGED, run.said(), text);
            pad.assertWhole(run);
        }
    }

    @Test
    @DisplayName("libraries that the new build does without are taken away")
    void oldLibrariesGo() throws Exception {
        pad.start();
        LaunchPad.write(pad.root.resolve("target/lib/rests.jar"), "rests");
        Files.delete(pad.root.resolve("target/lib/chords.jar"));
        pad.assertWhole(pad.start());
        assertFalse(Files.exists(pad.root.resolve("target/lib/rests.jar")));
    }

    // --- what a developer builds ----------------------------------------------

    @Test
    @DisplayName("what a developer built with Maven alone is started as it is, each time")
    void aDevelopersBuildIsUsed() throws Exception {
        for (int i = 1; i <= 2; i++) {
            pad.finish(pad.beginMaven());
            for (int j = 0; j < 2; j++) {
                var run = pad.start();
                assertEquals("", run.err());
                pad.assertWhole(run);
                pad.assertNothingLeft();
            }
            assertEquals(i, pad.builds());
        }
        damage("cut", pad.root.resolve("target/lib/tunes.jar"));
        var run = pad.start();
        assertEquals(DAMAGED, run.said());
        pad.assertWhole(run);
    }

    @ParameterizedTest(name = "at {0}")
    @DisplayName("what a developer's Maven left half done is not started")
    @ValueSource(
            strings = {"compiling", "half a jar", "a jar without libraries", "half a library", "no list of libraries"})
    void aDevelopersHalfBuildIsNotUsed(String step) throws Exception {
        pad.stayAt(step);
        var maven = pad.beginMaven();
        pad.awaitStep(step, maven);
        maven.kill();
        pad.finish(maven);
        pad.goOnFrom(step);
        var run = pad.start();
        assertEquals(BUILDING, run.said());
        pad.assertWhole(run);
        assertEquals(2, pad.builds());
    }

    // --- where nothing can be written -----------------------------------------

    @Test
    @DisplayName("a checkout that cannot be written and is not built says so")
    void saysThatItCannotBuild() throws Exception {
        Files.createFile(pad.root.resolve("target"));
        var run = pad.start();
        assertEquals("monochord: cannot build: " + pad.root + "/target cannot be written.\n", run.err());
        assertEquals(3, run.status());
    }

    @Test
    @DisplayName("a checkout that is built and cannot be written starts, and keeps its archive elsewhere")
    void aReadOnlyCheckoutStarts() throws Exception {
        pad.start();
        pad.moveTo("the library");
        var silent = startReadOnly();
        assertEquals("", silent.err());
        assertEquals(0, silent.status());
        assertFalse(silent.usedArchive());
        awaitArchiveElsewhere();
        Files.setLastModifiedTime(
                pad.root.resolve("pom.xml"), FileTime.from(Instant.now().plusSeconds(1)));
        var changed = startReadOnly();
        assertEquals(
                "monochord: the sources are newer than the jar, but " + pad.root
                        + "/target cannot be written; starting the jar.\n",
                changed.err());
        assertEquals(0, changed.status());
        assertTrue(changed.usedArchive());
        damage("cut", pad.root.resolve("target/lib/tunes.jar"));
        var damaged = startReadOnly();
        assertEquals(
                "monochord: a file of the last build is missing or damaged, and " + pad.root
                        + "/target cannot be written to build again.\n",
                damaged.err());
        assertEquals(3, damaged.status());
        assertEquals("", damaged.out());
    }

    @Test
    @DisplayName("what a developer built starts where it cannot be written, too")
    void aReadOnlyDevelopersBuildStarts() throws Exception {
        pad.finish(pad.beginMaven());
        var run = startReadOnly();
        assertEquals("", run.err());
        assertEquals(0, run.status());
        awaitArchiveElsewhere();
    }

    private void awaitArchiveElsewhere() throws InterruptedException {
        Path archive = pad.archiveElsewhere("jdk 17", "17.0.9");
        while (!Files.exists(archive.resolveSibling("place"))
                || Files.exists(archive.resolveSibling("monochord.jsa.making"))) {
            Thread.sleep(20);
        }
    }

    /** As somebody who may read all and write nothing: for root nothing is read-only, and it becomes another. */
    private LaunchPad.Run startReadOnly() throws Exception {
        Path launcher = pad.root.resolve("monochord");
        Path home = Files.createDirectories(Path.of(pad.env.get("HOME")));
        Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxrwxrwx"));
        if (!System.getProperty("user.name").equals("root")) {
            Path target = pad.root.resolve("target");
            Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("r-xr-xr-x"));
            var run = pad.startFrom(pad.root, launcher);
            Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rwxr-xr-x"));
            return run;
        }
        Path setpriv = Path.of("/usr/bin/setpriv");
        assumeTrue(Files.isExecutable(setpriv), "SKIPPED: root without setpriv may write everywhere");
        Files.setPosixFilePermissions(pad.base, PosixFilePermissions.fromString("rwxr-xr-x"));
        return pad.startFrom(
                pad.root, setpriv, "--reuid=65534", "--regid=65534", "--clear-groups", launcher.toString());
    }
}
