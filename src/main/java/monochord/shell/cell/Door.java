package monochord.shell.cell;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import monochord.shell.cell.far.Far;

/** Where the cell's JVM connects: only from this machine, and only who knows the secret, which no command line shows. */
final class Door implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 1000;

    private final ServerSocket listening;
    private final byte[] secret = new byte[Far.SECRET];

    Door() throws IOException {
        listening = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
        new SecureRandom().nextBytes(secret);
    }

    int port() {
        return listening.getLocalPort();
    }

    byte[] secret() {
        return secret.clone();
    }

    /** @throws IOException if nobody who knows the secret comes until {@code deadline}, in nanoseconds of this JVM */
    Socket admit(int purpose, long deadline) throws IOException {
        while (true) {
            long millis = (deadline - System.nanoTime()) / 1_000_000;
            if (millis <= 0) {
                throw new SocketException("the cell's JVM did not answer in time");
            }
            listening.setSoTimeout((int) millis);
            Socket caller = listening.accept();
            if (knows(caller, purpose)) {
                caller.setSoTimeout(0);
                caller.setTcpNoDelay(true);
                return caller;
            }
            caller.close();
        }
    }

    private boolean knows(Socket caller, int purpose) {
        try {
            caller.setSoTimeout(PATIENCE_MILLIS);
            InputStream in = caller.getInputStream();
            return MessageDigest.isEqual(in.readNBytes(Far.SECRET), secret) && in.read() == purpose;
        } catch (IOException silent) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        listening.close();
    }
}
