package monochord.shell;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** Runs the program where somebody listens, at a home of its own, so that no other test's settings are met. */
record Hall(Path home, Audience ear) {
    Hall(Path home) {
        this(home, new Audience());
    }

    /** Lines through a pipe. */
    Run typed(String... lines) {
        return outside(String.join("\n", lines) + "\n").run();
    }

    /** One sentence of a command line. */
    Run once(String line) {
        return outside("").run(line.split(" "));
    }

    Run.Outside outside(String typed) {
        Run.Outside usual = new Run.Outside();
        return new Run.Outside(
                typed.getBytes(StandardCharsets.UTF_8),
                Map.of("MONOCHORD_HOME", home.toString()),
                home,
                usual.lessons(),
                ear,
                usual.clock(),
                usual.keepers());
    }
}
