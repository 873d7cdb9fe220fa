package monochord.sound.keyboard;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Transmitter;

/**
 * A keyboard that is being listened to. Java is not told when one is unplugged, so it is looked for twice a second; missed
 * twice running, it is gone.
 */
public final class Connection implements AutoCloseable {
    private static final long BETWEEN_LOOKS_MILLIS = 500;
    private static final int MISSES = 2;

    private final String name;
    private final MidiDevice device;
    private final Transmitter transmitter;
    private final Consumer<KeyEvent> strokes;
    private final AtomicBoolean closed = new AtomicBoolean();

    Connection(String name, MidiDevice device, Consumer<KeyEvent> strokes) throws MidiUnavailableException {
        this.name = name;
        this.device = device;
        this.strokes = strokes;
        this.transmitter = device.getTransmitter();
        transmitter.setReceiver(new MidiMessageReader(stroke -> {
            if (!closed.get()) {
                strokes.accept(stroke);
            }
        }));
        daemon(this::watch, "keyboard watch");
    }

    private static void daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.start();
    }

    public String name() {
        return name;
    }

    private void watch() {
        try {
            for (int missed = 0; missed < MISSES; missed = isThere() ? 0 : missed + 1) {
                Thread.sleep(BETWEEN_LOOKS_MILLIS);
                if (closed.get()) {
                    return;
                }
            }
            if (closed.compareAndSet(false, true)) {
                strokes.accept(new KeyEvent.Gone());
                release();
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean isThere() {
        return device.isOpen()
                && MidiKeyboard.all().stream()
                        .anyMatch(keyboard -> keyboard.name().equals(name));
    }

    /** Nothing more comes from it. A device that hangs in being closed holds nobody up. */
    @Override
    public void close() {
        if (closed.compareAndSet(false, true)) {
            daemon(this::release, "keyboard closing");
        }
    }

    private void release() {
        try {
            transmitter.close();
            device.close();
        } catch (RuntimeException gone) {
            // it cannot be closed better than by being gone
        }
    }
}
