package monochord.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import monochord.cell.sandbox.SandboxMain;
import org.junit.jupiter.api.Test;

/** Who gets in. Guard: {@code CellSocket.knows}; without it the first who comes is taken for the cell. */
class CellSocketTest {
    private static final long PATIENCE = Duration.ofHours(1).toNanos();

    private static Socket caller(CellSocket door, byte[] secret, int purpose) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), door.port());
        socket.getOutputStream().write(secret);
        socket.getOutputStream().write(purpose);
        return socket;
    }

    @Test
    void onlyWhoKnowsTheSecretGetsIn() throws Exception {
        try (CellSocket door = new CellSocket();
                Socket silent = new Socket(InetAddress.getLoopbackAddress(), door.port());
                Socket guessing = caller(door, new byte[SandboxMain.SECRET], SandboxMain.TALK);
                Socket elsewhere = caller(door, door.secret(), SandboxMain.CONTROL);
                Socket right = caller(door, door.secret(), SandboxMain.TALK)) {
            Socket admitted = CompletableFuture.supplyAsync(() -> admit(door)).get();
            assertEquals(right.getLocalPort(), admitted.getPort());
            for (Socket stranger : new Socket[] {silent, guessing, elsewhere}) {
                assertTrue(isShut(stranger));
            }
            admitted.close();
        }
    }

    private static Socket admit(CellSocket door) {
        try {
            return door.admit(SandboxMain.TALK, System.nanoTime() + PATIENCE);
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    private static boolean isShut(Socket socket) throws IOException {
        try {
            return socket.getInputStream().read() < 0;
        } catch (java.net.SocketException reset) {
            return true;
        }
    }

    @Test
    void nobodyIsWaitedForWithoutEnd() throws IOException {
        try (CellSocket door = new CellSocket()) {
            assertEquals(
                    "its JVM did not answer in time",
                    assertThrows(
                                    IOException.class,
                                    () -> door.admit(
                                            SandboxMain.TALK,
                                            System.nanoTime()
                                                    + Duration.ofMillis(200).toNanos()))
                            .getMessage());
        }
    }

    /** A JVM that has ended is not waited for. Guard: {@code shut} in {@code Link.open}. */
    @Test
    void aDoorThatIsShutMeanwhileLetsNobodyIn() throws Exception {
        CellSocket door = new CellSocket();
        Thread shuts = new Thread(() -> {
            try {
                Thread.sleep(100);
                door.close();
            } catch (IOException | InterruptedException failed) {
                throw new AssertionError(failed);
            }
        });
        shuts.start();
        assertEquals(
                "its JVM did not come up",
                assertThrows(IOException.class, () -> door.admit(SandboxMain.TALK, System.nanoTime() + PATIENCE))
                        .getMessage());
        shuts.join();
    }

    /** Guard: the loopback address in {@code CellSocket}. */
    @Test
    void nobodyComesFromAnotherMachine() throws IOException {
        try (CellSocket door = new CellSocket();
                Socket here = new Socket(InetAddress.getLoopbackAddress(), door.port())) {
            assertTrue(here.getInetAddress().isLoopbackAddress());
            for (var network : java.util.Collections.list(java.net.NetworkInterface.getNetworkInterfaces())) {
                for (var address : java.util.Collections.list(network.getInetAddresses())) {
                    if (!address.isLoopbackAddress() && address instanceof java.net.Inet4Address) {
                        assertThrows(IOException.class, () -> new Socket(address, door.port()).close());
                    }
                }
            }
        }
    }
}
