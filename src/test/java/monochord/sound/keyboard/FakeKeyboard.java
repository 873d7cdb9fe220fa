package monochord.sound.keyboard;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Transmitter;

/** A MIDI keyboard without keys: the test presses them, or sends any bytes at all. */
public final class FakeKeyboard implements MidiDevice {
    private final Info info;
    private final List<Receiver> listeners = new CopyOnWriteArrayList<>();
    private volatile boolean open;
    private volatile boolean busy;
    private volatile boolean mute;

    FakeKeyboard(String name) {
        info = new Info(name, "nobody", "a keyboard of the tests", "1") {};
    }

    /** From now on something else holds it. */
    public void isHeldElsewhere() {
        busy = true;
    }

    /** From now on it does not answer when it is opened. */
    public void doesNotAnswer() {
        mute = true;
    }

    public void press(int... keys) {
        for (int key : keys) {
            send(0x90, key, 90);
        }
    }

    public void release(int... keys) {
        for (int key : keys) {
            send(0x80, key, 64);
        }
    }

    /** All down, held for a moment, all up. */
    public void plays(int... keys) throws InterruptedException {
        press(keys);
        Thread.sleep(30);
        release(keys);
    }

    public void send(int... bytes) {
        byte[] message = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            message[i] = (byte) bytes[i];
        }
        for (Receiver listener : listeners) {
            listener.send(new AnyMessage(message), -1);
        }
    }

    private static final class AnyMessage extends MidiMessage {
        AnyMessage(byte[] bytes) {
            super(bytes);
        }

        @Override
        public Object clone() {
            return new AnyMessage(getMessage());
        }
    }

    @Override
    public Info getDeviceInfo() {
        return info;
    }

    @Override
    public void open() throws MidiUnavailableException {
        if (busy) {
            throw new MidiUnavailableException("busy");
        }
        while (mute) {
            sleep();
        }
        open = true;
    }

    private static void sleep() throws MidiUnavailableException {
        try {
            Thread.sleep(20_000);
        } catch (InterruptedException interrupted) {
            throw new MidiUnavailableException("given up");
        }
    }

    @Override
    public void close() {
        open = false;
    }

    @Override
    public boolean isOpen() {
        return open;
    }

    @Override
    public long getMicrosecondPosition() {
        return -1;
    }

    @Override
    public int getMaxReceivers() {
        return 0;
    }

    @Override
    public int getMaxTransmitters() {
        return -1;
    }

    @Override
    public Receiver getReceiver() throws MidiUnavailableException {
        throw new MidiUnavailableException("it only sends");
    }

    @Override
    public List<Receiver> getReceivers() {
        return List.of();
    }

    @Override
    public Transmitter getTransmitter() {
        return new Transmitter() {
            private Receiver receiver;

            @Override
            public void setReceiver(Receiver newReceiver) {
                receiver = newReceiver;
                listeners.add(newReceiver);
            }

            @Override
            public Receiver getReceiver() {
                return receiver;
            }

            @Override
            public void close() {
                listeners.remove(receiver);
            }
        };
    }

    @Override
    public List<Transmitter> getTransmitters() {
        return List.of();
    }
}
