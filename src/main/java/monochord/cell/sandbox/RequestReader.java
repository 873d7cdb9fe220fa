package monochord.cell.sandbox;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import monochord.cell.protocol.Frame;
import monochord.cell.protocol.MessageKind;

/** Reads what the line says, on a thread of its own: the word to stop counts at once, all else waits its turn. */
final class RequestReader {
    private final DataInputStream line;
    private final Runnable stop;
    private final BlockingQueue<Frame> waiting = new LinkedBlockingQueue<>();

    RequestReader(InputStream line, Runnable stop) {
        this.line = new DataInputStream(new BufferedInputStream(line));
        this.stop = stop;
    }

    /** Until the line is gone; then this JVM ends. */
    void read() {
        try {
            while (true) {
                Frame frame = Frame.read(line);
                if (frame.message().kind() == MessageKind.STOP) {
                    stop.run();
                } else {
                    waiting.add(frame);
                }
            }
        } catch (IOException gone) {
            JvmExit.withLine();
        }
    }

    /** What is to be done next, once it is said. */
    Frame next() throws InterruptedException {
        return waiting.take();
    }
}
