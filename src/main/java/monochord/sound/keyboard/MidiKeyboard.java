package monochord.sound.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Sequencer;
import javax.sound.midi.Synthesizer;
import monochord.text.Phrase;

/**
 * A MIDI keyboard that is plugged in, or was when it was looked for.
 *
 * @param name as the system calls it; two of one make are numbered
 */
public record MidiKeyboard(String name, MidiDevice.Info info) {
    private static final long PATIENCE_MILLIS = 3000;

    /** All that are there now; none where this Java has no MIDI. */
    public static List<MidiKeyboard> all() {
        List<MidiKeyboard> found = new ArrayList<>();
        for (MidiDevice.Info info : infos()) {
            if (isKeyboard(info)) {
                found.add(new MidiKeyboard(nameAmong(found, info.getName().strip()), info));
            }
        }
        return found;
    }

    private static MidiDevice.Info[] infos() {
        try {
            return MidiSystem.getMidiDeviceInfo();
        } catch (RuntimeException | LinkageError noMidi) {
            return new MidiDevice.Info[0];
        }
    }

    /** Whatever has something to say and is no part of this Java. */
    private static boolean isKeyboard(MidiDevice.Info info) {
        try {
            MidiDevice device = MidiSystem.getMidiDevice(info);
            boolean ours = device instanceof Sequencer || device instanceof Synthesizer;
            return !ours && device.getMaxTransmitters() != 0;
        } catch (MidiUnavailableException | RuntimeException vanished) {
            return false;
        }
    }

    private static String nameAmong(List<MidiKeyboard> found, String name) {
        String plain = name.isEmpty() ? "keyboard" : name;
        String free = plain;
        for (int number = 2; isTaken(found, free); number++) {
            free = plain + " (" + number + ")";
        }
        return free;
    }

    private static boolean isTaken(List<MidiKeyboard> found, String name) {
        return found.stream().anyMatch(other -> other.name.equals(name));
    }

    /**
     * Listens to it.
     *
     * @param strokes what happens on it, on a thread of the system's; must not take long
     * @throws KeyboardTrouble if it is busy, gone, or does not answer within three seconds
     */
    public Connection connect(Consumer<KeyEvent> strokes) throws KeyboardTrouble {
        FutureTask<Connection> opening = new FutureTask<>((Callable<Connection>) () -> open(strokes));
        Thread thread = new Thread(opening, "keyboard opening");
        thread.setDaemon(true);
        thread.start();
        try {
            return opening.get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (ExecutionException failed) {
            throw new KeyboardTrouble(name, reason(failed.getCause()));
        } catch (TimeoutException silent) {
            opening.cancel(true);
            throw new KeyboardTrouble(name, Phrase.of("it does not answer"));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new KeyboardTrouble(name, Phrase.of("it was not waited for"));
        }
    }

    private static Phrase reason(Throwable failed) {
        return Phrase.of(
                failed instanceof MidiUnavailableException
                        ? "something else holds it, or it was just unplugged"
                        : "it is not there any more");
    }

    private Connection open(Consumer<KeyEvent> strokes) throws MidiUnavailableException {
        MidiDevice device = MidiSystem.getMidiDevice(info);
        device.open();
        try {
            return new Connection(name, device, strokes);
        } catch (MidiUnavailableException | RuntimeException failed) {
            device.close();
            throw failed;
        }
    }
}
