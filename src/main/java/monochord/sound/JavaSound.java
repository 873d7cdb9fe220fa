package monochord.sound;

import javax.sound.midi.Sequence;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** The one door to the card. Sound here is 16 bits, stereo, the lower byte first. */
public final class JavaSound {
    /** Frames a second. */
    public static final int RATE = 44_100;

    public static final int FRAME_BYTES = 4;
    /** The highest sample that passes for silence, about 72 dB below full scale. */
    public static final int SILENCE = 8;

    static final AudioFormat FORMAT = new AudioFormat(RATE, 16, 2, true, false);
    /** What the card holds in advance, 0.1 s: enough to outlast a pause of the JVM. */
    private static final int CARD_BYTES = RATE / 10 * FRAME_BYTES;

    private JavaSound() {}

    /**
     * The sound output, opened.
     *
     * @throws LineUnavailableException if something else holds it
     * @throws IllegalArgumentException if there is none
     */
    public static SourceDataLine card() throws LineUnavailableException {
        SourceDataLine card = AudioSystem.getSourceDataLine(FORMAT);
        card.open(FORMAT, CARD_BYTES);
        return card;
    }

    /** Frames until the sequence is over, rests at the end included. */
    public static long frames(Sequence sequence) {
        return sequence.getMicrosecondLength() * RATE / 1_000_000;
    }

    public static boolean isSilent(byte[] sound, int length) {
        for (int i = 0; i < length; i += 2) {
            int sample = sound[i + 1] << 8 | sound[i] & 0xFF;
            if (Math.abs(sample) > SILENCE) {
                return false;
            }
        }
        return true;
    }
}
