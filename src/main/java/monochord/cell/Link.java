package monochord.cell;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import monochord.cell.protocol.Frame;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import monochord.cell.protocol.WorkingFolder;
import monochord.text.Failure;
import monochord.text.Phrase;

/** One JVM of a cell, and what is said to it and by it over its standard streams. */
final class Link {
    /** On a machine that has much else to do a JVM takes its time; one that has ended is not waited for. */
    private static final Duration START = Duration.ofMinutes(2);

    private static final int WAITING = 64;
    private static final int LOOK_MILLIS = 100;
    /** A JVM that has let go of its streams is about to end; on a busy machine that takes its time. */
    private static final int EXIT_SECONDS = 10;

    private final WorkingFolder folder;
    private final Process process;
    private final OutsideWatch watch;
    private final DataOutputStream out;
    private final BlockingQueue<Frame> arrived = new ArrayBlockingQueue<>(WAITING);
    private volatile int request;
    private volatile boolean broken;

    private Link(WorkingFolder folder, Process process) {
        this.folder = folder;
        this.process = process;
        this.watch = OutsideWatch.over(process, folder.path().toString());
        this.out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream()));
        Thread reader = new Thread(this::read, "cell");
        reader.setDaemon(true);
        reader.start();
    }

    /**
     * Starts a JVM and waits until it can be talked to.
     *
     * @throws IOException if that does not come about
     */
    static Link open() throws IOException {
        WorkingFolder folder = WorkingFolder.make();
        try {
            return greeted(new Link(folder, new Launch(folder).start()));
        } catch (IOException failed) {
            folder.remove();
            throw failed;
        }
    }

    private static Link greeted(Link link) throws IOException {
        Message first = link.next(START.toMillis());
        if (first == null || first.kind() != MessageKind.READY) {
            link.end();
            throw new Failure(Phrase.of("its JVM did not come up"));
        }
        return link;
    }

    /** What answers no request is forged, and ends the JVM. */
    private void read() {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(process.getInputStream()))) {
            while (true) {
                Frame frame = Frame.read(in);
                if (frame.request() > request || frame.request() < 0) {
                    throw new IOException("a frame answers request " + frame.request() + " of " + request);
                }
                arrived.put(frame);
            }
        } catch (IOException gone) {
            broken = true;
            process.destroyForcibly();
        } catch (InterruptedException never) {
            Thread.currentThread().interrupt();
        }
    }

    /** Asks for something; what is still said about anything earlier is not heard any more. */
    void ask(Message message) throws IOException {
        synchronized (out) {
            request++;
            new Frame(request, message).write(out);
        }
    }

    /** The next message about the last request, for what answers an earlier one comes too late; or null if none comes in this time or none can come any more. */
    Message next(long millis) {
        long deadline = System.nanoTime() + millis * 1_000_000;
        try {
            while (true) {
                long left = (deadline - System.nanoTime()) / 1_000_000;
                Frame frame = arrived.poll(Math.max(0, Math.min(left, LOOK_MILLIS)), TimeUnit.MILLISECONDS);
                if (frame != null && frame.request() == request) {
                    return frame.message();
                } else if (frame == null && (left <= 0 || broken && arrived.isEmpty())) {
                    return null;
                }
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return null;
        }
    }

    /** Whether there is nobody at the other end any more, nor a message left from there. */
    boolean isGone() {
        return broken && arrived.isEmpty();
    }

    /** Whether it has ended between two questions: what may be left of it is that it leaves. */
    boolean hasLeft() {
        return broken || !process.isAlive();
    }

    /** Asks the snippet that runs to stop. */
    void stop() {
        try {
            synchronized (out) {
                new Frame(request, Message.of(MessageKind.STOP)).write(out);
            }
        } catch (IOException gone) {
            broken = true;
        }
    }

    /** How the JVM ended, or −1 if it did not of itself within a moment. */
    int exitStatus() {
        try {
            return process.waitFor(EXIT_SECONDS, TimeUnit.SECONDS) ? process.exitValue() : -1;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return -1;
        }
    }

    /** Ends the JVM with all it has started, and takes its folder away. */
    void end() {
        broken = true;
        watch.end();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        exitStatus();
        arrived.clear();
        folder.remove();
    }

    long pid() {
        return process.pid();
    }

    Path folder() {
        return folder.path();
    }
}
