package monochord;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A copy of the launcher in a folder of its own, with a Java and a Maven that only pretend, and a PATH that holds these
 * and the few tools the launcher may use.
 */
final class LaunchPad {
    private static final List<String> TOOLS =
            List.of("cat", "find", "mkdir", "mv", "ps", "readlink", "rm", "rmdir", "sed", "sleep", "touch");

    /** Says where it runs, with what and what it reads; trains when it is told to; ends as its last argument says. */
    private static final String JAVA = """
            #!/bin/sh
            for word in "$@"; do
                last=$word
                case $word in
                    -XX:ArchiveClassesAtExit=*) echo trained >"${word#*=}"; cat >/dev/null; exit 0 ;;
                    -XX:SharedArchiveFile=*) echo "archive ${word#*=}" ;;
                    -version) echo "    java.home = $SAYS_HOME"; echo "    java.version = 21.0.1"; exit 0 ;;
                esac
            done
            echo "java $0"
            echo "folder $(pwd)"
            for word in "$@"; do echo "word [$word]"; done
            while read -r line; do echo "read $line"; done
            case $last in status=*) exit "${last#*=}" ;; esac
            """;

    private static final String MAVEN = """
            #!/bin/sh
            while [ "$1" != -f ]; do shift; done
            place=${2%/pom.xml}
            echo "with $JAVA_HOME" >>"$place/builds"
            cat >/dev/null
            sleep 0.3
            [ ! -f "$place/broken" ] || { echo "no such semicolon"; exit 1; }
            echo jar >"$place/target/monochord.jar"
            """;

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
    }

    final Path base;
    final Path root;
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
        script(bin.resolve("mvn"), MAVEN);
        env.put("PATH", bin.toString());
        env.put("HOME", this.base.resolve("home").toString());
        env.put("JAVA_HOME", jdk("jdk 17", "17.0.9").toString());
    }

    private static Path find(String tool) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + tool + " on the PATH"));
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
        script(home.resolve("bin/java"), JAVA);
        write(home.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\nOS_NAME=\"None\"\n");
        return home;
    }

    /** Puts a java on the PATH that is a link into this JDK. */
    void linkJavaTo(Path home) throws IOException {
        Files.deleteIfExists(bin.resolve("java"));
        Files.createSymbolicLink(bin.resolve("java"), home.resolve("bin/java"));
    }

    Run start(String... args) throws IOException, InterruptedException {
        return finish(begin(root, root.resolve("monochord"), "", args));
    }

    Run startFrom(Path folder, Path launcher, String... args) throws IOException, InterruptedException {
        return finish(begin(folder, launcher, "", args));
    }

    Run startReading(String input) throws IOException, InterruptedException {
        return finish(begin(root, root.resolve("monochord"), input));
    }

    Process begin(Path folder, Path launcher, String input, String... args) throws IOException {
        var command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(args));
        var builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().clear();
        builder.environment().putAll(env);
        Process process = builder.start();
        try (var in = process.outputWriter(UTF_8)) {
            in.write(input);
        }
        return process;
    }

    /** What came of it. A launcher that hangs is ended after 20 seconds, and the test fails. */
    Run finish(Process process) throws IOException, InterruptedException {
        var tooLong = new CompletableFuture<>().completeOnTimeout(true, 20, TimeUnit.SECONDS);
        tooLong.thenRun(() -> {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        });
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), UTF_8);
        int status = process.waitFor();
        assertTrue(tooLong.cancel(false), "the launcher did not end; it said: " + err);
        return new Run(status, out, err);
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

    /** Waits until this archive fits the jar and no archive is being made; gives all there are. */
    List<Path> archivesWith(Path archive) throws IOException, InterruptedException {
        for (int i = 0; i < 500; i++) {
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
        return Files.exists(archive) && Files.getLastModifiedTime(archive).equals(Files.getLastModifiedTime(jar));
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
