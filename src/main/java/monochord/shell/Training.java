package monochord.shell;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.theory.note.Signs;
import monochord.view.Look;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/**
 * What the launcher plays once behind a first start: the classes met here go into the class-data archive, so it is what
 * most starts do, by a pipe, as one verb, and at a prompt on a terminal that nobody sees.
 */
final class Training {
    private static final List<String> SENTENCES = List.of(
            "show Abmaj7",
            "show E harmonic minor",
            "show IV I V bVI V I in D",
            "F C G Ab",
            "name C Eb G Ab",
            "numeral V65/ii in G",
            "borrow in C",
            "key Bb",
            "transpose F C G from C to Eb",
            "ask interval of P5 in D",
            "A",
            "lessons",
            "ask borrowed-chord of bVI in A",
            "F A C#",
            "hint",
            "F A C",
            "learn 1.1",
            "",
            "skip",
            "sho",
            "help",
            "quit");

    private final Surroundings around;

    Training(Surroundings around) {
        this.around = around;
    }

    void run() {
        new CommandLine(typed("\n")).run();
        new CommandLine(typed("\n")).run("-", "--json");
        new CommandLine(typed("\n")).run("show", "Abmaj7");
        converse(typed("\r"));
    }

    private static void converse(Surroundings unseen) {
        Verbs verbs = new Verbs();
        Sitting sitting = unseen.sitting();
        Look look = new Look(80, Signs.MUSIC, false, true);
        try (Terminal terminal = terminal(unseen.in())) {
            new Prompt(unseen, verbs, sitting, new LineReading(verbs, sitting), look).converse(terminal, text -> {
                terminal.writer().write(text);
                terminal.writer().flush();
            });
        } catch (IOException untrained) {
            unseen.err().println("No terminal could be made: " + untrained.getMessage());
        }
    }

    /** What is outside when somebody types the sentences and ends each with {@code enter}. */
    private Surroundings typed(String enter) {
        String lines = String.join(enter, SENTENCES) + enter;
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        return new Surroundings(
                new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)),
                nowhere,
                nowhere,
                false,
                false,
                around.environment(),
                around.folder(),
                around.lessons(),
                around.seeds(),
                Ear.silent(),
                around.clock(),
                around.keepers());
    }

    private static Terminal terminal(InputStream keys) throws IOException {
        return TerminalBuilder.builder()
                .provider("jni")
                .graphemeCluster(false)
                .system(false)
                .streams(keys, OutputStream.nullOutputStream())
                .type("xterm-256color")
                .size(Size.of(80, 24))
                .build();
    }
}
