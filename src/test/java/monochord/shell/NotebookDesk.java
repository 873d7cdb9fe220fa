package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import monochord.file.Digest;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.SeedSource;
import monochord.shell.storage.RecordKeeper;
import monochord.sound.Performance;
import monochord.text.Phrase;

/** Runs the program in a folder, with a home beside it, a record on disk and a card that is not there. */
record NotebookDesk(Path folder, Path home) {
    /** @param base an empty folder */
    static NotebookDesk in(Path base) throws IOException {
        return new NotebookDesk(
                Files.createDirectory(base.resolve("desk")), Files.createDirectory(base.resolve("home")));
    }

    private static Ear noCard() {
        return new Ear() {
            @Override
            public Phrase play(Performance performance) {
                return Phrase.sentence("There is no sound card here.");
            }

            @Override
            public void stop() {
                // nothing sounds
            }

            @Override
            public void listenToTheEnd() {
                // nothing sounds
            }
        };
    }

    /** A conversation through a pipe. */
    Run types(String... lines) {
        return run(String.join("\n", lines) + "\n");
    }

    /** One verb and its sentence. */
    Run says(String sentence) {
        return run("", sentence.split(" "));
    }

    private Run run(String in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false,
                false,
                Map.of("MONOCHORD_HOME", home.toAbsolutePath().toString()),
                folder,
                Run.OUR_LESSONS.toAbsolutePath(),
                SeedSource.from(11),
                noCard(),
                () -> 0,
                RecordKeeper::new);
        int status = Run.Outside.run(around, arguments);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    String read(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    /** A notebook with these lines typed and nothing answered. */
    static String notebook(String... typed) {
        return "# An evening\n\n```console\n"
                + String.join("\n\n", Stream.of(typed).map("▸ "::concat).toList())
                + "\n```\n";
    }

    /** Every file below, with its fingerprint. */
    static Map<String, String> all(Path folder) throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.toList()) {
                found.put(
                        folder.relativize(file).toString(),
                        Files.isRegularFile(file) ? Digest.of(Files.readAllBytes(file)) : "");
            }
        }
        return found;
    }

    /** Replays it and finds that it holds. */
    void holds(String name) {
        Run run = says("replay " + name);
        assertEquals(List.of("", 0), List.of(run.err(), run.status()), run::out);
    }
}
