package monochord.sound.keyboard;

import java.util.function.Consumer;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.Receiver;

/**
 * Reads what comes down the wire from a keyboard, whatever it is: what is no key going down or up is passed over.
 *
 * <p>Source: MIDI 1.0 Detailed Specification, channel voice messages; a note-on of velocity 0 is a note-off, controllers
 * 120 and 123 to 127 silence everything, FF resets, channel 10 is percussion in General MIDI: from memory.
 */
final class MidiMessageReader implements Receiver {
    private static final int NOTE_OFF = 0x80;
    private static final int NOTE_ON = 0x90;
    private static final int CONTROLLER = 0xB0;
    private static final int RESET = 0xFF;
    private static final int PERCUSSION = 9;
    private static final int ALL_SOUND_OFF = 120;
    private static final int ALL_NOTES_OFF = 123;
    private static final int SHORT_MESSAGE = 3;

    private final Consumer<KeyEvent> strokes;
    private volatile boolean closed;

    MidiMessageReader(Consumer<KeyEvent> strokes) {
        this.strokes = strokes;
    }

    @Override
    public void send(MidiMessage message, long timeStamp) {
        byte[] bytes = message == null ? null : message.getMessage();
        if (!closed && bytes != null && bytes.length > 0) {
            read(bytes);
        }
    }

    private void read(byte[] bytes) {
        int status = bytes[0] & 0xFF;
        if (status == RESET && bytes.length == 1) {
            strokes.accept(new KeyEvent.AllUp());
        } else if (bytes.length == SHORT_MESSAGE && bytes[1] >= 0 && (status & 0x0F) != PERCUSSION) {
            voice(status & 0xF0, bytes[1], bytes[2]);
        }
    }

    private void voice(int command, int first, int second) {
        if (command == NOTE_ON && second > 0) {
            strokes.accept(new KeyEvent.Down(first));
        } else if (command == NOTE_ON && second == 0 || command == NOTE_OFF) {
            strokes.accept(new KeyEvent.Up(first));
        } else if (command == CONTROLLER && (first == ALL_SOUND_OFF || first >= ALL_NOTES_OFF)) {
            strokes.accept(new KeyEvent.AllUp());
        }
    }

    @Override
    public void close() {
        closed = true;
    }
}
