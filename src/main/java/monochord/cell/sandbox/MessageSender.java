package monochord.cell.sandbox;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import monochord.cell.protocol.Frame;
import monochord.cell.protocol.Message;

/**
 * Carries messages to the line in the order given. A thread of its own writes them, so that a cell that is stopped in the
 * middle of a call never leaves half a message behind.
 */
final class MessageSender {
    private static final int MOST_WAITING = 1000;

    private final BlockingQueue<Frame> waiting = new LinkedBlockingQueue<>(MOST_WAITING);
    private final DataOutputStream out;
    private volatile boolean writing;
    private volatile int request;

    MessageSender(OutputStream line) {
        out = new DataOutputStream(new BufferedOutputStream(line));
        Thread carrier = new Thread(this::carry, "post");
        carrier.setDaemon(true);
        carrier.start();
    }

    private void carry() {
        try {
            while (true) {
                Frame next = waiting.take();
                writing = true;
                next.write(out);
                writing = false;
            }
        } catch (IOException gone) {
            JvmExit.withLine();
        } catch (InterruptedException tampered) {
            Runtime.getRuntime().halt(1);
        }
    }

    /** From now on what is sent belongs to that request. */
    void answers(int newRequest) {
        request = newRequest;
    }

    void send(Message message) {
        try {
            waiting.put(new Frame(request, message));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits a moment until all is on its way. */
    void flush() {
        for (int i = 0; i < 20 && (writing || !waiting.isEmpty()); i++) {
            Watchdog.sleep(10);
        }
    }
}
