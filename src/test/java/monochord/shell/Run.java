package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.LongSupplier;
import monochord.shell.playback.Ear;
import monochord.shell.storage.Keeper;
import monochord.shell.storage.RecordKeeper;

/**
 * What one whole run of the program came to.
 *
 * @param status the exit status
 */
record Run(int status, String out, String err) {
    static final Path OUR_LESSONS = Path.of("lessons");

    private static final AtomicInteger HOMES = new AtomicInteger();

    /** Everything outside a run: nothing typed, no terminal, seed 7, no sound. */
    record Outside(
            byte[] in,
            Map<String, String> environment,
            Path folder,
            Path lessons,
            Ear ear,
            LongSupplier clock,
            Function<Path, Keeper> keepers) {
        Outside() {
            this(
                    new byte[0],
                    home(nobodys()),
                    Path.of(""),
                    OUR_LESSONS,
                    Ear.silent(),
                    () -> 0,
                    home -> Keeper.inMemory());
        }

        private static Map<String, String> home(Path folder) {
            return Map.of("MONOCHORD_HOME", folder.toAbsolutePath().toString());
        }

        /** A folder for this run alone, which is not there yet. */
        private static Path nobodys() {
            return Path.of("target", "homes", ProcessHandle.current().pid() + "-" + HOMES.incrementAndGet());
        }

        Outside typing(String lines) {
            return new Outside(
                    lines.getBytes(StandardCharsets.UTF_8), environment, folder, lessons, ear, clock, keepers);
        }

        Outside bytes(byte[] bytes) {
            return new Outside(bytes, environment, folder, lessons, ear, clock, keepers);
        }

        Outside inFolder(Path other) {
            return new Outside(in, environment, other, lessons, ear, clock, keepers);
        }

        Outside withLessons(Path other) {
            return new Outside(in, environment, folder, other, ear, clock, keepers);
        }

        Outside hearing(Ear other) {
            return new Outside(in, environment, folder, lessons, other, clock, keepers);
        }

        Outside at(LongSupplier time) {
            return new Outside(in, environment, folder, lessons, ear, time, keepers);
        }

        /** With a record on disk in this folder. */
        Outside atHome(Path home) {
            return new Outside(in, home(home), folder, lessons, ear, clock, any -> new RecordKeeper(home));
        }

        Run run(String... arguments) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int status = run(around(new ByteArrayInputStream(in), printer(out), printer(err)), arguments);
            return new Run(status, withoutVersion(out), err.toString(StandardCharsets.UTF_8));
        }

        /** Every object of JSON ends with the version of what is promised, which JsonKindsTest holds. */
        private static String withoutVersion(ByteArrayOutputStream out) {
            return out.toString(StandardCharsets.UTF_8).replace(",\"schemaVersion\":1}\n", "}\n");
        }

        /** Runs it, and waits until nothing of it writes to a learner's folder any more. */
        static int run(Surroundings around, String... arguments) {
            int status = new CommandLine(around).run(arguments);
            Thread[] threads = new Thread[2 * Thread.activeCount()];
            for (Thread thread : Arrays.copyOf(threads, Thread.enumerate(threads))) {
                if (thread.getName().equals("opens the record")) {
                    awaitEnd(thread);
                }
            }
            return status;
        }

        private static void awaitEnd(Thread thread) {
            try {
                thread.join();
            } catch (InterruptedException interrupted) {
                throw new AssertionError("the record is not open yet", interrupted);
            }
        }

        Surroundings around(InputStream input, PrintStream out, PrintStream err) {
            return new Surroundings(
                    input, out, err, false, false, environment, folder, lessons, () -> 7, ear, clock, keepers);
        }

        private static PrintStream printer(ByteArrayOutputStream bytes) {
            return new PrintStream(bytes, true, StandardCharsets.UTF_8);
        }
    }

    /** One verb and its sentence, as a shell hands them over: cut at the spaces. */
    static Run of(String sentence) {
        return new Outside().run(sentence.split(" "));
    }

    static Run of(String sentence, String... more) {
        List<String> words = new java.util.ArrayList<>(List.of(sentence.split(" ")));
        words.addAll(List.of(more));
        return new Outside().run(words.toArray(String[]::new));
    }

    List<String> lines() {
        return out.lines().toList();
    }

    /** What came out, where the run was to end with this status and say nothing aside. */
    String result(int expected) {
        assertEquals("", err);
        assertEquals(expected, status);
        return out;
    }

    /** What was said aside, where the run was to end with this status and without a result. */
    String message(int expected) {
        assertEquals("", out);
        assertEquals(expected, status);
        return err;
    }
}
