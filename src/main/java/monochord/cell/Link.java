package monochord.cell;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import monochord.cell.protocol.WorkingFolder;
import monochord.cell.sandbox.SandboxMain;
import monochord.text.Failure;
import monochord.text.Phrase;

/** One JVM of a cell, and the two connections to it. */
final class Link {
    /** On a machine that has much else to do a JVM takes its time; one that has ended is not waited for. */
    private static final Duration START = Duration.ofMinutes(2);

    private static final int WAITING = 64;
    private static final int LOOK_MILLIS = 100;
    /** A JVM that has let go of its connections is about to end; on a busy machine that takes its time. */
    private static final int EXIT_SECONDS = 10;

    private final WorkingFolder folder;
    private final Process process;
    private final Socket talk;
    private final Socket control;
    private final DataOutputStream out;
    private final BlockingQueue<Message> arrived = new ArrayBlockingQueue<>(WAITING);
    private volatile boolean broken;

    private Link(WorkingFolder folder, Process process, Socket talk, Socket control) throws IOException {
        this.folder = folder;
        this.process = process;
        this.talk = talk;
        this.control = control;
        this.out = new DataOutputStream(new BufferedOutputStream(talk.getOutputStream()));
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
        try (CellSocket door = new CellSocket()) {
            Process process = new Launch(folder, door.port()).start();
            process.onExit().thenRun(() -> shut(door));
            try {
                return greeted(meet(folder, process, door));
            } catch (IOException failed) {
                process.destroyForcibly();
                throw failed;
            }
        } catch (IOException failed) {
            folder.remove();
            throw failed;
        }
    }

    private static void shut(CellSocket door) {
        try {
            door.close();
        } catch (IOException closed) {
            // nobody can come through it any more
        }
    }

    private static Link meet(WorkingFolder folder, Process process, CellSocket door) throws IOException {
        long deadline = System.nanoTime() + START.toNanos();
        try (OutputStream in = process.getOutputStream()) {
            in.write(door.secret());
        }
        Socket talk = door.admit(SandboxMain.TALK, deadline);
        return new Link(folder, process, talk, door.admit(SandboxMain.CONTROL, deadline));
    }

    private static Link greeted(Link link) throws IOException {
        Message first = link.next(START.toMillis());
        if (first == null || first.kind() != MessageKind.READY) {
            link.end();
            throw new Failure(Phrase.of("its JVM did not come up"));
        }
        return link;
    }

    private void read() {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(talk.getInputStream()))) {
            while (true) {
                arrived.put(Message.read(in));
            }
        } catch (IOException gone) {
            broken = true;
        } catch (InterruptedException never) {
            Thread.currentThread().interrupt();
        }
    }

    void send(Message message) throws IOException {
        message.write(out);
    }

    /** The next message, or null if none comes in this time or none can come any more. */
    Message next(long millis) {
        long deadline = System.nanoTime() + millis * 1_000_000;
        try {
            while (true) {
                long left = (deadline - System.nanoTime()) / 1_000_000;
                Message message = arrived.poll(Math.max(0, Math.min(left, LOOK_MILLIS)), TimeUnit.MILLISECONDS);
                if (message != null || left <= 0 || broken && arrived.isEmpty()) {
                    return message;
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
            control.getOutputStream().write(1);
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
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        exitStatus();
        close(talk);
        close(control);
        arrived.clear();
        folder.remove();
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException closed) {
            // it is of no use any more
        }
    }

    long pid() {
        return process.pid();
    }

    Path folder() {
        return folder.path();
    }
}
