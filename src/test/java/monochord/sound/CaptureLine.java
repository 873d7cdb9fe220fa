package monochord.sound;

import java.io.ByteArrayOutputStream;
import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;

/** The line of the test card: it takes sound no faster than it would be heard, and keeps it. */
public final class CaptureLine {
    private static final int BYTES_PER_SECOND = 176_400;
    private static final ByteArrayOutputStream HEARD = new ByteArrayOutputStream();

    /** A quarter of a second. */
    private static final int GOES_AWAY_AFTER = BYTES_PER_SECOND / 4;

    private static volatile boolean flushed;
    /** When the last line began to be heard, in nanoseconds of this JVM's clock; 0 for none since the last {@link #forget}. */
    private static volatile long lastBegun;

    /** When a line that is held began to be heard, in nanoseconds of this JVM's clock; 0 before. */
    private static volatile long wentOn;

    private final DataLine.Info info;
    private final String state;
    private volatile boolean open;
    private volatile boolean running;
    private int bufferBytes = BYTES_PER_SECOND / 10;
    private long begun;
    private volatile long written;

    CaptureLine(DataLine.Info info, String state) {
        this.info = info;
        this.state = state;
    }

    /** All that was played on any line since the last {@link #forget}. */
    public static byte[] heard() {
        synchronized (HEARD) {
            return HEARD.toByteArray();
        }
    }

    public static void forget() {
        synchronized (HEARD) {
            HEARD.reset();
        }
        flushed = false;
        lastBegun = 0;
        wentOn = 0;
    }

    /** When the last line began to be heard, in nanoseconds of this JVM's clock; 0 if none has. */
    public static long begunAt() {
        return lastBegun;
    }

    /** Lets lines that are held be heard. */
    static void goOn() {
        wentOn = System.nanoTime();
    }

    /** Whether a line was told to drop what it had not yet played, since the last {@link #forget}. */
    public static boolean wasFlushed() {
        return flushed;
    }

    public void flush() {
        flushed = true;
    }

    public DataLine.Info getLineInfo() {
        return info;
    }

    public AudioFormat getFormat() {
        return CaptureMixerProvider.FORMAT;
    }

    public void open(AudioFormat format, int bytes) throws LineUnavailableException {
        if (state.equals("busy")) {
            throw new LineUnavailableException("another program plays");
        }
        if (state.equals("slow")) {
            LockSupport.parkNanos(600_000_000);
        }
        bufferBytes = bytes;
        open = true;
    }

    public boolean isOpen() {
        return open;
    }

    public void start() {
        begun = System.nanoTime();
        lastBegun = begun;
        running = true;
    }

    public void stop() {
        running = false;
    }

    public void close() {
        running = false;
        open = false;
    }

    public boolean isRunning() {
        return running;
    }

    public boolean isActive() {
        return running;
    }

    public int getBufferSize() {
        return bufferBytes;
    }

    public int available() {
        return bufferBytes;
    }

    public int write(byte[] sound, int from, int length) {
        if (state.equals("broken") || state.equals("short") && written > GOES_AWAY_AFTER) {
            return 0;
        }
        if (state.equals("gone") && written > GOES_AWAY_AFTER) {
            throw new IllegalStateException("the device was unplugged");
        }
        synchronized (HEARD) {
            HEARD.write(sound, from, length);
        }
        written += length;
        while (written > bufferBytes && isHeld()) {
            LockSupport.parkNanos(1_000_000);
        }
        double ahead = (double) (written - bufferBytes) / BYTES_PER_SECOND - elapsed() / 1e9;
        if (ahead > 0) {
            LockSupport.parkNanos((long) (ahead * 1e9));
        }
        return length;
    }

    private boolean isHeld() {
        return state.equals("held") && wentOn == 0;
    }

    /** Nanoseconds. */
    private long elapsed() {
        return isHeld() ? 0 : System.nanoTime() - Math.max(begun, wentOn);
    }

    /** What the listener has heard: as much as time has passed, and no more than was given. */
    public long getLongFramePosition() {
        long heard = running ? elapsed() * (BYTES_PER_SECOND / 4) / 1_000_000_000L : written / 4;
        return Math.min(written / 4, heard);
    }
}
