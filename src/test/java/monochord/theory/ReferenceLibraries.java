package monochord.theory;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.NodePackages;
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
    private static final NodePackages PACKAGES =
            new NodePackages(Path.of("src", "test", "node"), Path.of("target", "node"), "answer.js");
    private static final Pattern STRING = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    private ReferenceLibraries() {}

    /** The answer to each question in order, each a list of strings. */
    public static List<List<String>> answers(List<List<String>> questions) throws IOException, InterruptedException {
        PACKAGES.install().ifPresent(ReferenceLibraries::giveUp);
        Path in = Files.createTempFile("questions", ".jsonl");
        Path out = Files.createTempFile("answers", ".jsonl");
        try {
            Files.write(in, questions.stream().map(ReferenceLibraries::json).toList());
            int status = PACKAGES.run(new ProcessBuilder("node", "answer.js")
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

    /** Skips the test and says so where nobody can overlook it; fails on the build machine. */
    private static void giveUp(String why) {
        String message = "NOT CHECKED against tonal and chord-symbol: " + why + ". Install node 18 or later to check.";
        if ("true".equals(System.getenv("CI"))) {
            Assertions.fail(message);
        }
        System.err.println(message);
        Assumptions.abort(message);
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
