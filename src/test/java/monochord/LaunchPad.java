package monochord;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A copy of the launcher in a folder of its own, with a Java and a Maven that only pretend, and a PATH that holds these
 * and the few tools the launcher may use.
 */
final class LaunchPad {
    private static final List<String> TOOLS =
            List.of("cat", "find", "mkdir", "mv", "ps", "readlink", "rm", "rmdir", "sed", "sh", "sleep", "touch", "wc");

    /** What stands in the stamp of such a build. */
    private static final String STAMP = "3 monochord.jar\n6 lib/chords.jar\n5 lib/tunes.jar\n";

    /** One start that goes on. */
    record Start(Process process, Path err) {
        void kill() {
            process.toHandle().destroyForcibly(); // the process itself would close its streams to us as well
        }

        String said() throws IOException {
            return Files.readString(err);
        }

        /** Waits until it has said this. */
        void awaitSaying(String message) throws IOException, InterruptedException {
            while (!said().contains(message)) {
                assertTrue(process.isAlive(), "the launcher ended, and said: " + said());
                Thread.sleep(20);
            }
        }
    }

    /** How one start ended. */
    record Run(int status, String out, String err) {
        /** The words that Java was started with. */
        List<String> words() {
            return out.lines()
                    .filter(line -> line.startsWith("word ["))
                    .map(line -> line.substring(6, line.length() - 1))
                    .toList();
        }

        boolean usedArchive() {
            return out.startsWith("archive ");
        }

        /** What was said besides how far the build is, which depends on how fast it goes. */
        String said() {
            return err.lines()
                    .filter(line -> !line.startsWith("monochord: building: "))
                    .map(line -> line + "\n")
                    .collect(Collectors.joining());
        }
    }

    final Path base;
    Path root;
    final Path bin;
    final Map<String, String> env = new HashMap<>();

    LaunchPad(Path base) throws IOException {
        this.base = base.toRealPath();
        root = Files.createDirectories(this.base.resolve("the house"));
        bin = Files.createDirectories(this.base.resolve("bin"));
        Files.copy(Path.of("monochord"), root.resolve("monochord"));
        executable(root.resolve("monochord"));
        write(root.resolve("pom.xml"), "<project/>");
        write(root.resolve("src/main/java/Tune.java"), "class Tune {}");
        for (String tool : TOOLS) {
            script(bin.resolve(tool), "#!/bin/sh\nexec " + find(tool) + " \"$@\"\n");
        }
        script(bin.resolve("mvn"), standIn("mvn"));
        env.put("PATH", bin.toString());
        env.put("HOME", this.base.resolve("home").toString());
        env.put("JAVA_HOME", jdk("jdk 17", "17.0.9").toString());
    }

    private static String standIn(String tool) throws IOException {
        return Files.readString(Path.of("src/test/resources/monochord/launcher", tool));
    }

    private static Path find(String tool) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + tool + " on the PATH"));
    }

    /** Gives the house another name. */
    void moveTo(String name) throws IOException {
        root = Files.move(root, base.resolve(name));
    }

    /** A folder that looks like a JDK of this version. */
    Path jdk(String name, String version) throws IOException {
        Path home = jre(name, version);
        script(home.resolve("bin/javac"), "#!/bin/sh\n");
        return home;
    }

    /** The same without a compiler. */
    Path jre(String name, String version) throws IOException {
        Path home = base.resolve(name);
        script(home.resolve("bin/java"), standIn("java"));
        write(home.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\nOS_NAME=\"None\"\n");
        return home;
    }

    /** Puts a java on the PATH that is a link into this JDK. */
    void linkJavaTo(Path home) throws IOException {
        Files.deleteIfExists(bin.resolve("java"));
        Files.createSymbolicLink(bin.resolve("java"), home.resolve("bin/java"));
    }

    Run start(String... args) throws IOException, InterruptedException {
        return finish(begin(args));
    }

    Start begin(String... args) throws IOException {
        return begin(root, command(root.resolve("monochord"), args), "");
    }

    Run startFrom(Path folder, Path launcher, String... args) throws IOException, InterruptedException {
        return finish(begin(folder, command(launcher, args), ""));
    }

    Run startReading(String input) throws IOException, InterruptedException {
        return finish(begin(root, command(root.resolve("monochord")), input));
    }

    private static List<String> command(Path launcher, String... args) {
        return Stream.concat(Stream.of(launcher.toString()), Stream.of(args)).toList();
    }

    Start begin(Path folder, List<String> command, String input) throws IOException {
        Path err = Files.createTempFile(base, "said", "");
        var builder = new ProcessBuilder(command).directory(folder.toFile()).redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().putAll(env);
        Process process = builder.start();
        try (var in = process.outputWriter(UTF_8)) {
            in.write(input);
        }
        return new Start(process, err);
    }

    /** What came of it. A launcher that hangs is ended after ten minutes, and the test fails. */
    Run finish(Start start) throws IOException, InterruptedException {
        Process process = start.process();
        var tooLong = new CompletableFuture<>().completeOnTimeout(true, 10, TimeUnit.MINUTES);
        tooLong.thenRun(() -> {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        });
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        int status = process.waitFor();
        assertTrue(tooLong.cancel(false), "the launcher did not end; it said: " + start.said());
        return new Run(status, out, start.said());
    }

    // --- building -----------------------------------------------------------

    /** Builds as a developer does, with Maven alone. */
    Start beginMaven() throws IOException {
        return begin(root, List.of(bin.resolve("mvn").toString(), "-f", root + "/pom.xml", "package"), "");
    }

    /** Has Maven stay at this step of its next build. */
    void stayAt(String step) throws IOException {
        Files.createFile(root.resolve("stay at " + step));
    }

    /** Waits until Maven has come to this step. */
    void awaitStep(String step, Start start) throws IOException, InterruptedException {
        Path reached = root.resolve("reached");
        while (!Files.exists(reached) || !Files.readString(reached).equals(step + "\n")) {
            assertTrue(start.process().isAlive(), "the launcher ended, and said: " + start.said());
            Thread.sleep(20);
        }
    }

    void goOnFrom(String step) throws IOException {
        Files.delete(root.resolve("stay at " + step));
    }

    /** The process that holds the build's lock. */
    ProcessHandle holder() throws IOException {
        String signed = Files.readString(root.resolve("target/.building/holder"));
        return ProcessHandle.of(Long.parseLong(signed.substring(0, signed.indexOf(' '))))
                .orElseThrow();
    }

    /** Asserts that the program started, from a build that is whole, and waits for its archive. */
    void assertWhole(Run run) throws IOException, InterruptedException {
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("word [" + root + "/target/monochord.jar]\n"), run.out());
        assertEquals(STAMP, Files.readString(root.resolve("target/stamp")));
        assertEquals("jar", Files.readString(root.resolve("target/monochord.jar")));
        assertEquals("chords", Files.readString(root.resolve("target/lib/chords.jar")));
        assertEquals("tunes", Files.readString(root.resolve("target/lib/tunes.jar")));
        archivesWith(archive("jdk 17", "17.0.9"));
    }

    /** Asserts that nothing is left of how it was built. */
    void assertNothingLeft() {
        for (String left : List.of("staged", "libraries", ".building", ".building.breaking")) {
            assertFalse(Files.exists(root.resolve("target").resolve(left)), left);
        }
    }

    /** How often Maven was started. */
    long builds() throws IOException {
        Path log = root.resolve("builds");
        return Files.exists(log) ? Files.readAllLines(log).size() : 0;
    }

    /** Where the archive for a JDK of this version belongs. */
    Path archive(String home, String version) {
        return root.resolve("target/cds/" + version + base.resolve(home) + "/monochord.jsa");
    }

    /** Where that archive belongs when it cannot lie beside the jar. */
    Path archiveElsewhere(String home, String version) {
        return Path.of(
                env.get("HOME") + "/.cache/monochord" + root + "/" + version + base.resolve(home) + "/monochord.jsa");
    }

    /** Waits until this archive fits the jar and no archive is being made; gives all there are. */
    List<Path> archivesWith(Path archive) throws IOException, InterruptedException {
        for (int i = 0; i < 30_000; i++) {
            List<Path> all = files(root.resolve("target/cds"));
            if (fits(archive) && all.stream().noneMatch(LaunchPad::isInTheMaking)) {
                return all.stream()
                        .filter(file -> file.endsWith("monochord.jsa"))
                        .toList();
            }
            Thread.sleep(20);
        }
        throw new AssertionError("no fitting " + archive + " among " + files(root.resolve("target/cds")));
    }

    private boolean fits(Path archive) throws IOException {
        Path jar = root.resolve("target/monochord.jar");
        Path place = archive.resolveSibling("place");
        return Files.exists(archive)
                && Files.getLastModifiedTime(archive).equals(Files.getLastModifiedTime(jar))
                && Files.exists(place)
                && Files.readString(place).equals(root + "\n");
    }

    private static boolean isInTheMaking(Path file) {
        return file.toString().contains("monochord.jsa.")
                || file.getFileName().toString().startsWith("new.");
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> !file.equals(folder)).toList();
        } catch (UncheckedIOException e) {
            return files(folder); // one was moved while we walked
        }
    }

    static void script(Path file, String text) throws IOException {
        write(file, text);
        executable(file);
    }

    static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static void executable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
}
