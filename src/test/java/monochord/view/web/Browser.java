package monochord.view.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.NodePackages;
import org.junit.jupiter.api.Assumptions;

/**
 * A real browser that opens pages and says what is wrong with them: headless Chromium, driven by {@code playwright-core}
 * 1.64.1 (Apache-2.0) through node.
 *
 * <p>Where there is no node or no Chromium the tests are skipped and say so.
 */
public final class Browser {
    private static final NodePackages PACKAGES =
            new NodePackages(Path.of("src", "test", "browser"), Path.of("target", "browser"), "open.js");

    private Browser() {}

    /**
     * Opens pages at 360 and 1280 pixels and on paper.
     *
     * @param folder where the sound of each recording goes, as {@code PAGE.1.pcm}: 16 bits, one channel, 44,100 a second
     * @return complaints, none if all is well
     */
    public static List<String> open(List<Path> pages, Path folder) throws IOException, InterruptedException {
        String program = program().orElse("");
        if (program.isEmpty()) {
            giveUp("no Chromium is on the path");
        }
        PACKAGES.install().ifPresent(Browser::giveUp);
        List<String> command = new ArrayList<>(List.of("node", "open.js", program, absolute(folder)));
        pages.forEach(page -> command.add(absolute(page)));
        Path said = Files.createTempFile("browser", ".txt");
        try {
            int status = PACKAGES.run(new ProcessBuilder(command).redirectOutput(said.toFile()));
            List<String> complaints = new ArrayList<>(Files.readAllLines(said));
            if (status != 0) {
                complaints.add("the browser ended with status " + status);
            }
            return complaints;
        } finally {
            Files.delete(said);
        }
    }

    private static String absolute(Path path) {
        return path.toAbsolutePath().toString();
    }

    private static Optional<String> program() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(Path.of(folder)::resolve))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .findFirst();
    }

    private static void giveUp(String why) {
        String message = "NOT CHECKED in a browser: " + why + ". Install node 20 and Chromium to check.";
        System.err.println(message);
        Assumptions.abort(message);
    }
}
