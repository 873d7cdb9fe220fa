package monochord.cell;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import monochord.cell.sandbox.SandboxMain;

/** Where the cell's JVM connects: only from this machine, and only who knows the secret, which no command line shows. */
final class CellSocket implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 1000;

    private final ServerSocket listening;
    private final byte[] secret = new byte[SandboxMain.SECRET];

    CellSocket() throws IOException {
        listening = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
        new SecureRandom().nextBytes(secret);
    }

    int port() {
        return listening.getLocalPort();
    }

    byte[] secret() {
        return secret.clone();
    }

    /** @throws IOException if the door is shut, or nobody who knows the secret comes until {@code deadline}, in nanoseconds */
    Socket admit(int purpose, long deadline) throws IOException {
        while (true) {
            Socket caller = next(deadline);
            if (knows(caller, purpose)) {
                caller.setSoTimeout(0);
                caller.setTcpNoDelay(true);
                return caller;
            }
            caller.close();
        }
    }

    private Socket next(long deadline) throws IOException {
        long millis = (deadline - System.nanoTime()) / 1_000_000;
        try {
            listening.setSoTimeout((int) Math.max(1, millis));
            return listening.accept();
        } catch (SocketTimeoutException nobody) {
            throw new SocketException("its JVM did not answer in time");
        } catch (SocketException shut) {
            throw new SocketException("its JVM did not come up");
        }
    }

    private boolean knows(Socket caller, int purpose) {
        try {
            caller.setSoTimeout(PATIENCE_MILLIS);
            InputStream in = caller.getInputStream();
            return MessageDigest.isEqual(in.readNBytes(SandboxMain.SECRET), secret) && in.read() == purpose;
        } catch (IOException silent) {
            return false;
        }
    }

    /** Also while somebody is waited for; nobody is from then on. Thread-safe. */
    @Override
    public void close() throws IOException {
        listening.close();
    }
}
