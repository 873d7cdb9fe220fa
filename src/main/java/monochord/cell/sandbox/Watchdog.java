package monochord.cell.sandbox;

import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;

/** Ends the JVM when the cell grows wild, and sees to it that the line is heard whatever the cell does. */
final class Watchdog {
    private static final int LOOK_MILLIS = 50;

    private Watchdog() {}

    /** @param reading reads what the line says until it is gone */
    static void begin(Runnable reading, MessageSender post) {
        Thread exit = new Thread(() -> {
            post.send(Message.of(MessageKind.LEAVES));
            post.flush();
        });
        Runtime.getRuntime().addShutdownHook(exit);
        start("requests", reading);
        start("count", Watchdog::count);
    }

    private static void start(String name, Runnable task) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
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
