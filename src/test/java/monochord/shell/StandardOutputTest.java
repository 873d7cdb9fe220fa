package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.SeedSource;
import monochord.shell.storage.Keeper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that never end come to an end where nobody reads the answers, or they cannot be written. */
@Tag("attack")
class StandardOutputTest {
    private static final String PIPE = "Broken pipe";
    private static final String DISK = "No space left on device";

    @TempDir
    private Path home;

    private final ByteArrayOutputStream messages = new ByteArrayOutputStream();

    /** The same line for ever. */
    private static final class Endless extends InputStream {
        private static final byte[] LINE = "C7\n".getBytes(StandardCharsets.UTF_8);
        private long read;

        @Override
        public int read() {
            return LINE[(int) (read++ % LINE.length)];
        }
    }

    private static StandardOutput failing(String reason) {
        return new StandardOutput(new OutputStream() {
            @Override
            public void write(int octet) throws IOException {
                throw new IOException(reason);
            }
        });
    }

    private int run(StandardOutput output, String... arguments) {
        PrintStream out = new PrintStream(new BufferedOutputStream(output, 1 << 16), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(messages, true, StandardCharsets.UTF_8);
        Surroundings around = new Surroundings(
                new Endless(),
                out,
                err,
                false,
                false,
                Map.of("MONOCHORD_HOME", home.toString()),
                home,
                Run.OUR_LESSONS,
                SeedSource.from(7),
                Ear.silent(),
                () -> 0,
                folder -> Keeper.inMemory());
        int status = new CommandLine(around).run(arguments);
        out.flush();
        return output.status(status, err);
    }

    @ParameterizedTest
    @CsvSource({"-", "show -", "''"})
    @DisplayName("a reader that has gone ends it quietly")
    void aReaderThatHasGoneEndsItQuietly(String arguments) {
        assertEquals(0, run(failing(PIPE), arguments.isEmpty() ? new String[0] : arguments.split(" ")));
        assertEquals("", messages.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @CsvSource({"-", "show -", "''"})
    @DisplayName("a full disk ends it with a message")
    void aFullDiskEndsItWithAMessage(String arguments) {
        assertEquals(3, run(failing(DISK), arguments.isEmpty() ? new String[0] : arguments.split(" ")));
        assertEquals(
                "monochord: standard output cannot be written: No space left on device\n",
                messages.toString(StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("also where there was but one answer")
    void aFullDiskIsSaidOfOneAnswer() {
        assertEquals(3, run(failing(DISK), "show", "C"));
    }
}
