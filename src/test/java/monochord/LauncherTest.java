package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drives the launcher for POSIX shells with a Java and a Maven that only pretend. */
class LauncherTest {
    private static final String BUILDING = "monochord: building, which happens once and may take a minute.\n";
    private static final String NEEDS = "Monochord needs a JDK 17 or newer: install one, or set JAVA_HOME to it.\n";

    @TempDir
    private Path base;

    private LaunchPad pad;

    @BeforeEach
    void setUp() throws IOException {
        assumeFalse(File.separatorChar == '\\', "SKIPPED on Windows: this launcher is for POSIX shells");
        pad = new LaunchPad(base);
    }

    private void says(String message) throws Exception {
        var run = pad.start();
        assertEquals("monochord: " + message, run.err());
        assertEquals("", run.out());
        assertEquals(3, run.status());
    }

    @Test
    @DisplayName("the shell can read the launcher")
    void theShellCanReadIt() throws Exception {
        Process check = new ProcessBuilder("sh", "-n", "monochord")
                .redirectErrorStream(true)
                .start();
        assertEquals("", pad.finish(check).out());
        assertEquals(0, check.exitValue());
    }

    @Test
    @DisplayName("the first start says that it builds, and builds with the Java it found")
    void theFirstStartBuilds() throws Exception {
        var run = pad.start();
        assertEquals(BUILDING, run.err());
        assertEquals(0, run.status());
        assertEquals(List.of("with " + pad.env.get("JAVA_HOME")), Files.readAllLines(pad.root.resolve("builds")));
    }

    @Test
    @DisplayName("the first start leaves an archive, and both it and the next one use it; the next one is silent")
    void theArchiveIsUsed() throws Exception {
        assertTrue(pad.start().usedArchive());
        var second = pad.start();
        assertTrue(second.usedArchive(), second.out());
        assertEquals("", second.err());
        assertEquals(1, pad.builds());
    }

    @Test
    @DisplayName("the sentence reaches the program word by word, and its exit status comes back")
    void wordsAndStatusPass() throws Exception {
        pad.env.put("MONOCHORD_JAVA_OPTS", "-Da=1 -Db=*");
        var run = pad.start("show", "F# minor", "", "*", "status=7");
        List<String> words = run.words();
        int jar = words.indexOf("-jar");
        assertEquals(List.of("-Da=1", "-Db=*"), words.subList(jar - 2, jar));
        assertEquals(
                List.of(pad.root.resolve("target/monochord.jar").toString(), "show", "F# minor", "", "*", "status=7"),
                words.subList(jar + 1, words.size()));
        assertEquals(7, run.status());
    }

    @Test
    @DisplayName("what is piped into the first start reaches the program, not Maven")
    void pipedInputReachesTheProgram() throws Exception {
        var run = pad.startReading("show Abmaj7\nquit\n");
        assertTrue(run.out().endsWith("read show Abmaj7\nread quit\n"), run.out());
    }

    @Test
    @DisplayName("it starts through a chain of links, from another folder, and stays in that folder")
    void startsThroughLinksFromAnywhere() throws Exception {
        Path elsewhere = Files.createDirectories(pad.base.resolve("else/where"));
        Files.createSymbolicLink(pad.base.resolve("else/two"), Path.of("../the house/monochord"));
        Files.createSymbolicLink(elsewhere.resolve("one"), Path.of("../two"));
        for (String way :
                List.of("one", "./one", "../where/one", elsewhere.resolve("one").toString())) {
            var run = pad.startFrom(elsewhere, Path.of("sh"), way);
            assertEquals(0, run.status(), run.err());
            assertTrue(run.out().contains("folder " + elsewhere + "\n"), run.out());
            assertTrue(
                    run.words()
                            .contains(pad.root.resolve("target/monochord.jar").toString()),
                    run.out());
        }
        assertEquals(1, pad.builds());
    }

    @Test
    @DisplayName("a runtime without a compiler is named as such")
    void namesAJre() throws Exception {
        pad.env.put("JAVA_HOME", pad.jre("jre 17", "17.0.9").toString());
        says("the Java 17.0.9 in " + pad.base + "/jre 17 is a runtime without a compiler (a JRE). " + NEEDS);
    }

    @Test
    @DisplayName("a Java under 17 is named with its version, also in the old way of counting")
    void namesAnOldJava() throws Exception {
        pad.env.put("JAVA_HOME", pad.jdk("jdk 11", "11.0.2").toString());
        says("the Java in " + pad.base + "/jdk 11 is version 11.0.2. " + NEEDS);
        pad.env.put("JAVA_HOME", pad.jdk("jdk 8", "1.8.0_402").toString());
        says("the Java in " + pad.base + "/jdk 8 is version 1.8.0_402. " + NEEDS);
    }

    @Test
    @DisplayName("it says so where there is no Java, neither in JAVA_HOME nor on the PATH")
    void saysThatThereIsNoJava() throws Exception {
        pad.env.put("JAVA_HOME", pad.base + "/gone");
        says("JAVA_HOME is " + pad.base + "/gone, but there is no bin/java in it. " + NEEDS);
        pad.env.remove("JAVA_HOME");
        says("no Java was found. " + NEEDS);
    }

    @Test
    @DisplayName("the java on the PATH is followed to its JDK, and again when the link is set to another one")
    void followsTheJavaOnThePath() throws Exception {
        pad.env.remove("JAVA_HOME");
        pad.linkJavaTo(pad.jdk("jdk 21", "21"));
        assertTrue(pad.start().out().contains("java " + pad.base + "/jdk 21/bin/java\n"));
        assertTrue(pad.start().out().contains("java " + pad.base + "/jdk 21/bin/java\n"));
        pad.linkJavaTo(pad.jdk("jdk 25", "25-ea"));
        assertTrue(pad.start().out().contains("java " + pad.base + "/jdk 25/bin/java\n"));
        assertEquals(2, pad.archivesWith(pad.archive("jdk 25", "25-ea")).size(), "one archive for each JDK");
    }

    @Test
    @DisplayName("a java on the PATH that is a script is asked where its JDK is")
    void asksAJavaThatIsAScript() throws Exception {
        Path home = pad.jdk("jdk 21", "21.0.1");
        pad.env.remove("JAVA_HOME");
        pad.env.put("SAYS_HOME", home.toString());
        Files.copy(home.resolve("bin/java"), pad.bin.resolve("java"));
        var run = pad.start();
        assertTrue(run.out().contains("java " + home + "/bin/java\n"), run.out() + run.err());
    }

    @Test
    @DisplayName("it says so where Maven is missing")
    void saysThatThereIsNoMaven() throws Exception {
        Files.delete(pad.bin.resolve("mvn"));
        says("building needs Maven, and there is no mvn on the PATH.\n");
    }

    @Test
    @DisplayName("a build that fails names its log, leaves no lock, and the next start tries again")
    void aFailedBuildNamesItsLog() throws Exception {
        Path broken = Files.createFile(pad.root.resolve("broken"));
        Path log = pad.root.resolve("target/build.log");
        var failed = pad.start();
        assertEquals(BUILDING + "monochord: the build failed; what Maven said is in " + log + ".\n", failed.err());
        assertEquals(3, failed.status());
        assertEquals("no such semicolon\n", Files.readString(log));
        Files.delete(broken);
        assertEquals(0, pad.start().status());
    }

    @Test
    @DisplayName("of two first starts at once, one builds and the other says that it waits; both start")
    void twoFirstStartsBuildOnce() throws Exception {
        Path launcher = pad.root.resolve("monochord");
        List<Process> both = Stream.of(pad.begin(pad.root, launcher, ""), pad.begin(pad.root, launcher, ""))
                .toList();
        var one = pad.finish(both.get(0));
        var two = pad.finish(both.get(1));
        assertEquals(1, pad.builds());
        assertEquals(List.of(0, 0), List.of(one.status(), two.status()), one.err() + two.err());
        assertEquals(
                List.of("monochord: another start is building, waiting.\n", BUILDING),
                Stream.of(one.err(), two.err()).sorted().toList());
        assertTrue(one.usedArchive() && two.usedArchive());
    }

    @Test
    @DisplayName("a lock that a dead start left behind is broken")
    void breaksTheLockOfTheDead() throws Exception {
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        LaunchPad.write(pad.root.resolve("target/.building/pid"), dead.pid() + "\n");
        assertEquals(0, pad.start().status());
        assertEquals(1, pad.builds());
        assertFalse(Files.exists(pad.root.resolve("target/.building")));
    }

    @Test
    @DisplayName("a source that is newer than the jar, or is gone, is a reason to build again")
    void newerSourcesAreBuilt() throws Exception {
        pad.start();
        Path tune = pad.root.resolve("src/main/java/Tune.java");
        Files.setLastModifiedTime(tune, FileTime.from(Instant.now().plusSeconds(1)));
        assertEquals(
                "monochord: the sources have changed, building again.\n",
                pad.start().err());
        Files.setLastModifiedTime(tune, FileTime.from(Instant.now().minusSeconds(60)));
        pad.start();
        long before = pad.builds();
        Files.delete(tune);
        pad.start();
        assertEquals(before + 1, pad.builds());
    }

    @Test
    @DisplayName("an archive of another jar is not used, and silently replaced for the next start")
    void aStaleArchiveIsReplaced() throws Exception {
        pad.start();
        Path jar = pad.root.resolve("target/monochord.jar");
        Files.setLastModifiedTime(jar, FileTime.from(Instant.now().plusSeconds(5)));
        var stale = pad.start();
        assertFalse(stale.usedArchive());
        assertEquals("", stale.err());
        Path archive = pad.archive("jdk 17", "17.0.9");
        assertEquals(List.of(archive), pad.archivesWith(archive));
        assertTrue(pad.start().usedArchive());
        assertEquals(1, pad.builds());
    }

    @Test
    @DisplayName("a newer build of the same JDK gets an archive of its own, and the old one goes")
    void aNewJdkGetsItsOwnArchive() throws Exception {
        pad.start();
        pad.jdk("jdk 17", "17.0.10");
        var updated = pad.start();
        assertFalse(updated.usedArchive());
        assertEquals("", updated.err());
        Path archive = pad.archive("jdk 17", "17.0.10");
        assertEquals(List.of(archive), pad.archivesWith(archive));
        assertTrue(pad.start().usedArchive());
    }
}
