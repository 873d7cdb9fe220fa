package monochord;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;

/**
 * Packages for node that tests ask, put into a folder once, exactly as their lock file says. Their cache lies in {@code
 * target}, so that nobody's home matters.
 *
 * @param sources the folder with {@code package.json}, its lock file and the program
 * @param folder where they go
 * @param program the file that node runs
 */
public record NodePackages(Path sources, Path folder, String program) {
    private static final boolean WINDOWS = System.getProperty("os.name").startsWith("Windows");

    /** Puts them in place; processes take turns. Answers why it did not come about, or nothing. */
    public Optional<String> install() throws IOException, InterruptedException {
        Files.createDirectories(folder);
        try (FileChannel turn =
                        FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock ours = turn.lock()) {
            if (!ours.isValid()) {
                throw new IOException("the lock was lost");
            }
            for (String file : List.of("package.json", "package-lock.json", program)) {
                Files.copy(sources.resolve(file), folder.resolve(file), StandardCopyOption.REPLACE_EXISTING);
            }
            return installed();
        }
    }

    private Optional<String> installed() throws IOException, InterruptedException {
        String lock = Files.readString(folder.resolve("package-lock.json"));
        Path before = folder.resolve("installed-lock.json");
        String npm = WINDOWS ? "npm.cmd" : "npm";
        if (!isThere("node")) {
            return Optional.of("node is not on the path");
        }
        if (Files.exists(before) && Files.readString(before).equals(lock)) {
            return Optional.empty();
        }
        if (!isThere(npm)) {
            return Optional.of("npm is not on the path");
        }
        if (run(new ProcessBuilder(npm, "ci", "--ignore-scripts", "--no-audit", "--no-fund")) != 0) {
            return Optional.of("npm ci could not put the packages of " + sources + " into " + folder);
        }
        Files.writeString(before, lock);
        return Optional.empty();
    }

    private boolean isThere(String tool) throws InterruptedException {
        try {
            return run(new ProcessBuilder(tool, "--version")) == 0;
        } catch (IOException notThere) {
            return false;
        }
    }

    /** Runs a command in their folder to its end and answers its status; what it says goes nowhere, unless redirected. */
    public int run(ProcessBuilder command) throws IOException, InterruptedException {
        if (command.redirectOutput() == ProcessBuilder.Redirect.PIPE) {
            command.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        }
        command.environment()
                .put(
                        "npm_config_cache",
                        Path.of("target", "npm").toAbsolutePath().toString());
        Process process = command.directory(folder.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        return process.waitFor();
    }
}
