package monochord.shell;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;
import monochord.shell.playback.LiveEar;
import monochord.shell.sitting.SeedSource;
import monochord.shell.storage.RecordKeeper;

/** The program as the operating system sees it: its streams, its surroundings and its exit status. */
final class Program {
    private static final int BUFFER = 1 << 16;

    private Program() {}

    /**
     * Opens the prompt, or runs one verb, and ends the JVM; to train the class-data archive it does all of that by itself,
     * and the JVM ends when all threads have.
     */
    static void run(String... arguments) {
        StandardOutput output = new StandardOutput();
        PrintStream out = buffered(output);
        if (Boolean.getBoolean("monochord.training")) {
            new Training(surroundings(out)).run();
            return;
        }
        int status = new CommandLine(surroundings(out)).run(arguments);
        out.flush();
        System.exit(output.status(status, System.err));
    }

    /** Buffered, and UTF-8 whatever the platform's own encoding is. */
    private static PrintStream buffered(StandardOutput output) {
        return new PrintStream(new BufferedOutputStream(output, BUFFER), false, StandardCharsets.UTF_8);
    }

    private static Surroundings surroundings(PrintStream out) {
        return new Surroundings(
                System.in,
                out,
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
                isTerminal(0),
                isTerminal(1),
                System.getenv(),
                Path.of(""),
                lessons(),
                SeedSource.from(new Random().nextInt(Integer.MAX_VALUE)),
                new LiveEar(),
                System::currentTimeMillis,
                RecordKeeper::new);
    }

    /** The launcher says which streams are terminals, for the JVMs do not agree on what a console is. */
    private static boolean isTerminal(int stream) {
        String said = System.getProperty("monochord.terminals");
        return said == null ? System.console() != null : said.indexOf('0' + stream) >= 0;
    }

    /** The folder of lessons: as {@code MONOCHORD_LESSONS} says, else the one beside the folder of the jar. */
    private static Path lessons() {
        String said = System.getenv("MONOCHORD_LESSONS");
        if (said != null && !said.isEmpty()) {
            return Path.of(said);
        }
        return ProgramFolders.lessons();
    }
}
