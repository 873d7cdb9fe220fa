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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** When the launcher builds, with what, and what it says where it cannot: a file cut or deleted, a folder read-only. */
@Tag("attack")
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
        Files.setLastModifiedTime(pad.root.resolve("pom.xml"), FileTime.from(Instant.now()));
        pad.stayAt("no list of libraries");
        var maven = pad.beginMaven();
        pad.awaitStep("no list of libraries", maven);
        Files.setLastModifiedTime(
                pad.root.resolve("target/monochord.jar"),
                FileTime.from(Instant.now().minusSeconds(60))); // Maven leaves a jar in which nothing is new
        pad.goOnFrom("no list of libraries");
        pad.finish(maven);
        assertEquals("", pad.start().err());
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
