package monochord.sound;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Sequence;
import javax.sound.midi.Synthesizer;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/** The one door to the JDK's synthesizer. */
final class JavaSound {
    /** The synthesizer looks up user preferences, and those log lines to the terminal when the home is new or read-only. */
    private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

    static {
        PREFERENCES.setLevel(Level.OFF);
    }

    private JavaSound() {}

    static Synthesizer synthesizer() throws MidiUnavailableException {
        return MidiSystem.getSynthesizer();
    }

    /**
     * What the synthesizer plays of this sequence: 44,100 frames a second, two channels of 16 bits, the lower byte first,
     * with four seconds after the end.
     *
     * @throws IOException if this Java has no synthesizer
     */
    static AudioInputStream render(Sequence sequence) throws IOException {
        try {
            return AudioSystem.getAudioInputStream(new ByteArrayInputStream(MidiFile.bytes(sequence)));
        } catch (UnsupportedAudioFileException unsupported) {
            throw new IOException("this Java has no synthesizer", unsupported);
        }
    }
}
