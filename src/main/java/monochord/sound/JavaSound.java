package monochord.sound;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sound.midi.Sequence;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.UnsupportedAudioFileException;

/** The one door to the JDK's synthesizer and to the card. Sound here is 16 bits, stereo, the lower byte first. */
final class JavaSound {
    /** Frames a second. */
    static final int RATE = 44_100;

    static final int FRAME_BYTES = 4;
    /** The highest sample that passes for silence, about 72 dB below full scale. */
    static final int SILENCE = 8;

    static final AudioFormat FORMAT = new AudioFormat(RATE, 16, 2, true, false);
    /** What the card holds in advance, 0.1 s: enough to outlast a pause of the JVM. */
    private static final int CARD_BYTES = RATE / 10 * FRAME_BYTES;

    /**
     * The synthesizer looks up user preferences, and those log lines to the terminal when the home is new or read-only.
     */
    private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

    static {
        PREFERENCES.setLevel(Level.OFF);
    }

    private JavaSound() {}

    /**
     * The sound output, opened.
     *
     * @throws LineUnavailableException if something else holds it
     * @throws IllegalArgumentException if there is none
     */
    static SourceDataLine card() throws LineUnavailableException {
        SourceDataLine card = AudioSystem.getSourceDataLine(FORMAT);
        card.open(FORMAT, CARD_BYTES);
        return card;
    }

    /**
     * What the synthesizer plays of this sequence.
     *
     * @throws IOException if this Java has no synthesizer, or does not take the bank
     */
    static InputStream render(Sequence sequence, Optional<Bank> bank) throws IOException {
        Optional<InputStream> sound = Synthesis.of(sequence, bank.map(Bank::sounds));
        if (sound.isPresent()) {
            return bank.isPresent() ? new Watched(sound.get()) : sound.get();
        }
        if (bank.isPresent()) {
            throw new IOException("this Java does not take other banks; start it by the program's own launcher");
        }
        return rendered(sequence);
    }

    /** Without the synthesizer's inner door: as the audio of a MIDI file. */
    private static InputStream rendered(Sequence sequence) throws IOException {
        try {
            return AudioSystem.getAudioInputStream(new ByteArrayInputStream(MidiFile.bytes(sequence)));
        } catch (UnsupportedAudioFileException unsupported) {
            throw new IOException("this Java has no synthesizer", unsupported);
        }
    }

    /** Frames until the sequence is over, rests at the end included. */
    static long frames(Sequence sequence) {
        return sequence.getMicrosecondLength() * RATE / 1_000_000;
    }

    static boolean isSilent(byte[] sound, int length) {
        for (int i = 0; i < length; i += 2) {
            int sample = sound[i + 1] << 8 | sound[i] & 0xFF;
            if (Math.abs(sample) > SILENCE) {
                return false;
            }
        }
        return true;
    }
}
