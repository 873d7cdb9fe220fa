package monochord.theory;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Libraries written in JavaScript, asked through node: {@code tonal} 6.4.3, {@code chord-symbol} 4.0.0, for memory
 * {@code ts-fsrs} 5.4.2 and for MIDI files {@code midi-file} 1.2.4, all MIT.
 *
 * <p>A batch of questions is one run of node, a JSON array of strings a line each way. The packages are put into {@code
 * target/node} once, exactly as their lock file says. Where there is no node, or the packages cannot be had, the tests
 * are skipped and say so; on the build machine, where {@code CI} is {@code true}, they fail.
 */
public final class ReferenceLibraries {
    private static final Path SOURCES = Path.of("src", "test", "node");
    private static final Path INSTALLED = Path.of("target", "node");
    private static final Pattern STRING = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final int MINUTES = 2;
    private static final boolean WINDOWS = System.getProperty("os.name").startsWith("Windows");

    private ReferenceLibraries() {}

    /** The answer to each question in order, each a list of strings. */
    public static List<List<String>> answers(List<List<String>> questions) throws IOException, InterruptedException {
        install();
        Path in = Files.createTempFile("questions", ".jsonl");
        Path out = Files.createTempFile("answers", ".jsonl");
        try {
            Files.write(in, questions.stream().map(ReferenceLibraries::json).toList());
            int status = run(new ProcessBuilder("node", "answer.js")
                    .redirectInput(in.toFile())
                    .redirectOutput(out.toFile()));
            Assertions.assertEquals(0, status, "node ended with a fault");
            return Files.readAllLines(out).stream()
                    .map(ReferenceLibraries::strings)
                    .toList();
        } finally {
            Files.delete(in);
            Files.delete(out);
        }
    }

    private static synchronized void install() throws IOException, InterruptedException {
        Files.createDirectories(INSTALLED);
        if (!isThere("node")) {
            giveUp("node is not on the path");
        }
        for (String file : List.of("package.json", "package-lock.json", "answer.js")) {
            Files.copy(SOURCES.resolve(file), INSTALLED.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
        String lock = Files.readString(INSTALLED.resolve("package-lock.json"));
        Path installedLock = INSTALLED.resolve("installed-lock.json");
        if (Files.exists(installedLock) && Files.readString(installedLock).equals(lock)) {
            return;
        }
        String npm = WINDOWS ? "npm.cmd" : "npm";
        if (!isThere(npm)) {
            giveUp("npm is not on the path");
        }
        if (run(new ProcessBuilder(npm, "ci", "--ignore-scripts", "--no-audit", "--no-fund")) != 0) {
            giveUp("npm ci could not put the packages of src/test/node into target/node");
        }
        Files.writeString(installedLock, lock);
    }

    private static boolean isThere(String program) throws InterruptedException {
        try {
            return run(new ProcessBuilder(program, "--version")) == 0;
        } catch (IOException notThere) {
            return false;
        }
    }

    /** Skips the test and says so where nobody can overlook it; fails on the build machine. */
    private static void giveUp(String why) {
        String message = "NOT CHECKED against tonal and chord-symbol: " + why + ". Install node 18 or later to check.";
        if ("true".equals(System.getenv("CI"))) {
            Assertions.fail(message);
        }
        System.err.println(message);
        Assumptions.abort(message);
    }

    private static int run(ProcessBuilder command) throws IOException, InterruptedException {
        if (command.redirectOutput() == ProcessBuilder.Redirect.PIPE) {
            command.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        }
        Process process = command.directory(INSTALLED.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            return -1;
        }
        return process.exitValue();
    }

    private static String json(List<String> words) {
        return words.stream()
                .map(word -> '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"')
                .collect(Collectors.joining(",", "[", "]"));
    }

    private static List<String> strings(String json) {
        Matcher matcher = STRING.matcher(json);
        return Stream.iterate(matcher.find(), found -> found, found -> matcher.find())
                .map(found -> matcher.group(1))
                .toList();
    }
}
