package monochord.view.web;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * A real browser that opens pages and says what is wrong with them: headless Chromium, driven by {@code playwright-core}
 * 1.64.1 (Apache-2.0) through node.
 *
 * <p>Where there is no node or no Chromium the tests are skipped and say so.
 */
public final class Browser {
    private static final Path SOURCES = Path.of("src", "test", "browser");
    private static final Path INSTALLED = Path.of("target", "browser");
    private static final int MINUTES = 3;

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
        install();
        List<String> command = new ArrayList<>(List.of("node", "open.js", program, absolute(folder)));
        pages.forEach(page -> command.add(absolute(page)));
        Path said = Files.createTempFile("browser", ".txt");
        try {
            int status = run(new ProcessBuilder(command).redirectOutput(said.toFile()));
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

    /** Puts the packages into place once, exactly as their lock file says; two processes take turns. */
    private static void install() throws IOException, InterruptedException {
        Files.createDirectories(INSTALLED);
        try (FileChannel turn = FileChannel.open(
                        INSTALLED.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock ours = turn.lock()) {
            if (!ours.isValid()) {
                throw new IOException("the lock was lost");
            }
            for (String file : List.of("package.json", "package-lock.json", "open.js")) {
                Files.copy(SOURCES.resolve(file), INSTALLED.resolve(file), StandardCopyOption.REPLACE_EXISTING);
            }
            String lock = Files.readString(INSTALLED.resolve("package-lock.json"));
            Path installed = INSTALLED.resolve("installed-lock.json");
            if (Files.exists(installed) && Files.readString(installed).equals(lock)) {
                return;
            }
            if (!isThere("node") || !isThere("npm")) {
                giveUp("node and npm are not on the path");
            }
            if (run(new ProcessBuilder("npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund")) != 0) {
                giveUp("npm ci could not put the package of src/test/browser into target/browser");
            }
            Files.writeString(installed, lock);
        }
    }

    private static boolean isThere(String program) throws InterruptedException {
        try {
            return run(new ProcessBuilder(program, "--version")) == 0;
        } catch (IOException notThere) {
            return false;
        }
    }

    private static void giveUp(String why) {
        String message = "NOT CHECKED in a browser: " + why + ". Install node 20 and Chromium to check.";
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
}
