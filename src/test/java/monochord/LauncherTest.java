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
        var check = pad.finish(pad.begin(pad.root, List.of("sh", "-n", "monochord"), ""));
        assertEquals("", check.err());
        assertEquals(0, check.status());
    }

    @Test
    @DisplayName("the first start says that it builds, and builds with the Java it found")
    void theFirstStartBuilds() throws Exception {
        var run = pad.start();
        assertEquals(BUILDING, run.said());
        pad.assertWhole(run);
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
    @DisplayName("in a checkout that was moved the archive, which fits nowhere else, is made anew, and the jar is not")
    void aMovedCheckoutGetsItsOwnArchive() throws Exception {
        pad.start();
        pad.moveTo("the new house");
        var moved = pad.start();
        pad.assertWhole(moved);
        assertFalse(moved.usedArchive());
        assertEquals("", moved.err());
        Path archive = pad.archive("jdk 17", "17.0.9");
        assertEquals(List.of(archive), pad.archivesWith(archive));
        assertTrue(pad.start().usedArchive());
        assertEquals(1, pad.builds());
    }

    @Test
    @DisplayName(
            "where the JVM was killed as it made the archive, the next start tries again; where it makes none, no more")
    void aKilledTrainingIsDoneAgain() throws Exception {
        Path java = Path.of(pad.env.get("JAVA_HOME"), "bin/java");
        String trains = Files.readString(java);
        LaunchPad.script(java, trains.replace("echo trained >\"${word#*=}\"; cat >/dev/null; exit 0", "kill -9 $$"));
        assertFalse(pad.start().usedArchive());
        LaunchPad.script(java, trains.replace("echo trained >\"${word#*=}\"; cat >/dev/null; exit 0", "exit 1"));
        Path archive = pad.archive("jdk 17", "17.0.9");
        while (!Files.exists(archive)) {
            assertFalse(pad.start().usedArchive()); // makes none while the one before is still at it
        }
        pad.archivesWith(archive);
        LaunchPad.script(java, trains);
        assertFalse(pad.start().usedArchive());
        assertEquals(0, Files.size(archive));
    }

    @Test
    @DisplayName("standard streams that are closed are opened on nothing")
    void closedStreamsAreOpened() throws Exception {
        Path streams = pad.base.resolve("streams");
        pad.env.put("STREAMS", streams.toString());
        pad.start();
        for (String closed : List.of("<&-", ">&-", "2>&-", "<&- >&- 2>&-")) {
            Files.delete(streams);
            var run = pad.startFrom(pad.root, Path.of("sh"), "-c", "exec ./monochord " + closed);
            assertEquals(0, run.status(), closed + run.err());
            assertEquals(
                    List.of("0 is open", "1 is open", "2 is open"),
                    Files.readAllLines(streams).stream().sorted().toList(),
                    closed);
        }
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
