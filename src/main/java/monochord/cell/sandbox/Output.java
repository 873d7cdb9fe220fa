package monochord.cell.sandbox;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * What a cell prints, line by line, up to a bound; what is printed beyond it, or between cells, is only counted. What the
 * compiler prints when it breaks is nobody's: it works on the thread that made this, and cells on others.
 */
final class Output extends OutputStream {
    private final Consumer<String> show;
    private final Thread compiling = Thread.currentThread();
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private int room;
    private long left;

    Output(Consumer<String> show) {
        this.show = show;
    }

    /** From now on this many bytes are shown. */
    synchronized void open(int bytes) {
        line.reset();
        room = bytes;
        left = 0;
    }

    /** @return how many bytes were not shown */
    synchronized long end() {
        flushLine();
        room = 0;
        return left;
    }

    @Override
    public synchronized void write(int b) {
        if (Thread.currentThread() == compiling) {
            return;
        }
        if (room == 0) {
            left++;
            return;
        }
        room--;
        line.write(b);
        if (b == '\n' || room == 0) {
            flushLine();
        }
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int count) {
        if (Thread.currentThread() == compiling) {
            return;
        }
        int shown = Math.min(count, room);
        for (int i = 0; i < shown; i++) {
            write(bytes[from + i]);
        }
        left += count - shown;
    }

    private void flushLine() {
        if (line.size() > 0) {
            show.accept(line.toString(StandardCharsets.UTF_8));
            line.reset();
        }
    }
}
