package monochord.cell.sandbox;

import java.io.IOException;
import java.io.InputStream;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;

/** Ends the JVM when the line is gone or the cell grows wild, and hands on the word to stop. */
final class Watchdog {
    private static final int LOOK_MILLIS = 50;

    private Watchdog() {}

    static void begin(InputStream control, Runnable stop, MessageSender post) {
        Thread exit = new Thread(() -> {
            post.send(Message.of(MessageKind.LEAVES));
            post.flush();
        });
        Runtime.getRuntime().addShutdownHook(exit);
        start("control", () -> listen(control, stop));
        start("count", Watchdog::count);
    }

    private static void start(String name, Runnable task) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    /** Each byte says stop; the end says that the line is gone. */
    private static void listen(InputStream control, Runnable stop) {
        try {
            while (control.read() >= 0) {
                stop.run();
            }
        } catch (IOException gone) {
            // the end, too
        }
        JvmExit.withLine();
    }

    private static void count() {
        while (true) {
            checkThreads();
            sleep(LOOK_MILLIS);
        }
    }

    /** Ends the JVM if it has too many threads. */
    static void checkThreads() {
        ThreadGroup all = Thread.currentThread().getThreadGroup();
        while (all.getParent() != null) {
            all = all.getParent();
        }
        if (all.activeCount() >= Limits.THREADS) {
            Runtime.getRuntime().halt(Limits.TOO_MANY_THREADS);
        }
    }

    static void sleep(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException early) {
            // then a little earlier
        }
    }
}
