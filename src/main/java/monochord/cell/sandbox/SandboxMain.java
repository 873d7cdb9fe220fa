package monochord.cell.sandbox;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import org.jline.utils.Signals;

/** Where the cell's JVM starts; the line starts it, see {@code Launch}, and talks to it over its standard streams. */
public final class SandboxMain {
    /** The compiler calls itself for every parenthesis within another, and a line may have some thousands. */
    private static final long COMPILERS_STACK = 64L << 20;

    private SandboxMain() {}

    /** Does what the line says until it is gone. */
    public static void main(String[] none) {
        InputStream line = System.in;
        MessageSender post = new MessageSender(new FileOutputStream(FileDescriptor.out));
        Signals.register("INT", () -> {}); // ctrl-C at the line is the line's
        closeDoors();
        new Thread(null, () -> work(line, post), "workshop", COMPILERS_STACK).start();
    }

    /** To the end of this JVM, even where something breaks that nobody has thought of. */
    private static void work(InputStream line, MessageSender post) {
        try {
            RequestHandler workshop = new RequestHandler(post);
            RequestReader requests = new RequestReader(line, workshop::stop);
            Watchdog.begin(requests::read, post);
            workshop.serve(requests);
        } catch (InterruptedException tampered) {
            // a snippet has reached for this thread
        } finally {
            JvmExit.withLine();
        }
    }

    /** Nothing can be read, and no program started: the JDK's own class for that is made to fail for good. */
    private static void closeDoors() {
        System.setIn(InputStream.nullInputStream());
        try {
            Class.forName("java.lang.ProcessImpl");
        } catch (ClassNotFoundException | Error closed) {
            System.clearProperty("jdk.lang.Process.launchMechanism");
        }
    }
}
