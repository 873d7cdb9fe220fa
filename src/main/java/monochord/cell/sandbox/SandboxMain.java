package monochord.cell.sandbox;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import org.jline.utils.Signals;

/** Where the cell's JVM starts; the line starts it, see {@code Launch}. */
public final class SandboxMain {
    /** Bytes of the secret that the line hands over on standard input, and wants to hear on each connection. */
    public static final int SECRET = 32;
    /** Said behind the secret on the connection over which the two talk. */
    public static final int TALK = 'T';
    /** Said behind the secret on the connection that stops a cell and tells that the line lives. */
    public static final int CONTROL = 'C';

    /** The compiler calls itself for every parenthesis within another, and a line may have some thousands. */
    private static final long COMPILERS_STACK = 64L << 20;

    private SandboxMain() {}

    /**
     * Connects to the line, and does what it says until it is gone.
     *
     * @param arguments the port at which the line listens
     */
    public static void main(String[] arguments) throws IOException {
        int port = Integer.parseInt(arguments[0]);
        byte[] secret = System.in.readNBytes(SECRET);
        Socket talk = connect(port, secret, TALK);
        Socket control = connect(port, secret, CONTROL);
        Signals.register("INT", () -> {}); // ctrl-C at the line is the line's
        closeDoors();
        new Thread(null, () -> work(talk, control), "workshop", COMPILERS_STACK).start();
    }

    /** To the end of this JVM, even where something breaks that nobody has thought of. */
    private static void work(Socket talk, Socket control) {
        try {
            MessageSender post = new MessageSender(talk.getOutputStream());
            RequestHandler workshop = new RequestHandler(post);
            Watchdog.begin(control.getInputStream(), workshop::stop, post);
            workshop.serve(new DataInputStream(talk.getInputStream()));
        } catch (IOException gone) {
            // the line will not come back
        } finally {
            JvmExit.withLine();
        }
    }

    private static Socket connect(int port, byte[] secret, int purpose) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        socket.getOutputStream().write(secret);
        socket.getOutputStream().write(purpose);
        return socket;
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
