package monochord.sound;

import monochord.sound.level.Limiter;

/**
 * Brings rendered sound to its level and into the form of cards and files: 16 bits, stereo, the lower byte first; softened
 * wherever it would be too loud.
 */
public final class Levelled {
    private static final int FULL_SCALE = 32_767;

    /** A decibel a second: too slow to be heard. */
    private static final double CHANGE = Math.pow(10, 1.0 / 20 / JavaSound.RATE);

    private double gain;
    private double wanted;
    private final Limiter limiter = new Limiter();
    /** Frames that the limiter still owes. */
    private int late = Limiter.AHEAD;

    /** @param gain a factor */
    public Levelled(double gain) {
        this.gain = gain;
        this.wanted = gain;
    }

    /** From now on the gain goes there, slowly. */
    public void turnTo(double newGain) {
        wanted = newGain;
    }

    private void turn() {
        gain = gain < wanted ? Math.min(wanted, gain * CHANGE) : Math.max(wanted, gain / CHANGE);
    }

    /**
     * @param from samples of whole frames, left and right in turn
     * @param into filled from its beginning
     * @return how many bytes; at the beginning fewer than there are frames, for what comes out is a little late
     */
    public int pass(float[] from, int samples, byte[] into) {
        int bytes = 0;
        for (int i = 0; i < samples; i += 2) {
            if (gain != wanted) {
                turn();
            }
            limiter.next((float) (from[i] * gain), (float) (from[i + 1] * gain));
            if (late > 0) {
                late--;
            } else {
                bytes = put(limiter.left(), into, bytes);
                bytes = put(limiter.right(), into, bytes);
            }
        }
        return bytes;
    }

    private static int put(float value, byte[] into, int at) {
        int sample = Math.round(value * FULL_SCALE);
        into[at] = (byte) sample;
        into[at + 1] = (byte) (sample >> 8);
        return at + 2;
    }
}
