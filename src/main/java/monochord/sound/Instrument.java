package monochord.sound;

import javax.sound.midi.MidiChannel;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Synthesizer;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** The live synthesizer, used by the player's thread alone. */
final class Instrument {
    private static final long AT_ONCE = -1;

    private Synthesizer synthesizer;
    private Receiver receiver;

    /**
     * Opens the synthesizer if it is not open. A Java without desktop parts, or on a machine without the sound library,
     * fails with a LinkageError.
     */
    Outcome open() {
        if (receiver != null) {
            return Outcome.SOUNDING;
        }
        try {
            synthesizer = JavaSound.synthesizer();
            synthesizer.open();
            receiver = synthesizer.getReceiver();
            return Outcome.SOUNDING;
        } catch (MidiUnavailableException unavailable) {
            close();
            return why(unavailable);
        } catch (LinkageError | RuntimeException incomplete) {
            close();
            return Outcome.NO_SYNTHESIZER;
        }
    }

    private static Outcome why(Exception unavailable) {
        if (unavailable.getCause() instanceof LineUnavailableException) {
            return Outcome.BUSY;
        }
        return AudioSystem.isLineSupported(new Line.Info(SourceDataLine.class))
                ? Outcome.NO_SYNTHESIZER
                : Outcome.NO_CARD;
    }

    void send(MidiMessage message) {
        receiver.send(message, AT_ONCE);
    }

    /** Cuts off every note, pedal or not. */
    void silence() {
        for (MidiChannel channel : synthesizer.getChannels()) {
            if (channel != null) {
                channel.allSoundOff();
                channel.resetAllControllers();
            }
        }
    }

    void close() {
        if (synthesizer != null) {
            synthesizer.close();
        }
        synthesizer = null;
        receiver = null;
    }
}
