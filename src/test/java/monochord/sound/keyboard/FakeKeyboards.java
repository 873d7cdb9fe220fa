package monochord.sound.keyboard;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.spi.MidiDeviceProvider;

/** The MIDI keyboards of the tests: whatever a test has plugged in. */
public final class FakeKeyboards extends MidiDeviceProvider {
    private static final List<FakeKeyboard> PLUGGED = new CopyOnWriteArrayList<>();

    public static FakeKeyboard plug(String name) {
        FakeKeyboard keyboard = new FakeKeyboard(name);
        PLUGGED.add(keyboard);
        return keyboard;
    }

    public static void unplug(FakeKeyboard keyboard) {
        PLUGGED.remove(keyboard);
    }

    public static void unplugAll() {
        PLUGGED.clear();
    }

    @Override
    public MidiDevice.Info[] getDeviceInfo() {
        return PLUGGED.stream().map(FakeKeyboard::getDeviceInfo).toArray(MidiDevice.Info[]::new);
    }

    @Override
    public MidiDevice getDevice(MidiDevice.Info info) {
        return PLUGGED.stream()
                .filter(keyboard -> keyboard.getDeviceInfo() == info)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no such device"));
    }
}
