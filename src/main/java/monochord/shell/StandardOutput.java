package monochord.shell;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.Locale;
import monochord.text.Phrase;
import monochord.view.Answer;

/**
 * Standard output as long as somebody reads it. A {@link PrintStream} only says that something went wrong; this remembers
 * what, so that a reader who has gone ends the run quietly and a full disk with a message.
 */
final class StandardOutput extends OutputStream {
    private final OutputStream descriptor;
    private IOException failed;

    StandardOutput() {
        this(new FileOutputStream(FileDescriptor.out));
    }

    StandardOutput(OutputStream descriptor) {
        this.descriptor = descriptor;
    }

    @Override
    public void write(int octet) throws IOException {
        write(new byte[] {(byte) octet}, 0, 1);
    }

    /** After the first failure nothing is tried any more. */
    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        if (failed != null) {
            throw failed;
        }
        try {
            descriptor.write(bytes, from, count);
        } catch (IOException refused) {
            failed = refused;
            throw refused;
        }
    }

    /** The exit status in the end, when all is written; says why where something could not be. */
    int status(int status, PrintStream messages) {
        if (failed == null) {
            return status;
        } else if (isReaderGone()) {
            return Answer.DONE;
        }
        messages.println(Phrase.of(
                "monochord: standard output cannot be written: {0}",
                Phrase.typed(String.valueOf(failed.getMessage()))));
        return Answer.FAILED;
    }

    /** The system says it in words only: EPIPE, and its like on Windows. */
    private boolean isReaderGone() {
        return String.valueOf(failed.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
    }
}
