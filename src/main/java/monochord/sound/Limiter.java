package monochord.sound;

import java.util.Arrays;

/**
 * Keeps sound below a ceiling by looking a little ahead: it turns down smoothly before a peak comes, and up again slowly
 * after it. What stays below the ceiling passes untouched, bit for bit.
 *
 * <p>The gain of a frame is the mean, over the frames looked ahead, of gains that would each do for it; so it is itself
 * small enough, and never jumps. Look-ahead limiting is common practice, no source.
 */
final class Limiter {
    /** One decibel below full scale. */
    static final int CEILING = 29_204;

    /** Frames looked ahead, 5 ms. */
    static final int AHEAD = 220;

    private static final int WINDOW = AHEAD + 1;
    /** Four fifths of the way back in a quarter of a second. */
    private static final double RELEASE = 1.5e-4;

    private static final double NEARLY_OPEN = 0.9999;

    private final short[] left = new short[WINDOW];
    private final short[] right = new short[WINDOW];
    private final double[] wanted = new double[WINDOW];
    private final double[] released = new double[WINDOW];
    private double gain = 1;
    /** Frames for which nothing has had to be turned down. */
    private int calm = 2 * WINDOW;

    private int at;

    Limiter() {
        Arrays.fill(wanted, 1);
        Arrays.fill(released, 1);
    }

    /**
     * Takes the next frame.
     *
     * @return the frame {@value #AHEAD} before it, made soft enough; the left channel in the lower 16 bits
     */
    int next(short newLeft, short newRight) {
        left[at] = newLeft;
        right[at] = newRight;
        int peak = Math.max(Math.abs(newLeft), Math.abs(newRight));
        wanted[at] = peak > CEILING ? (double) CEILING / peak : 1;
        calm = peak > CEILING || gain < 1 ? 0 : Math.min(calm + 1, 2 * WINDOW);
        int out = at + 1 == WINDOW ? 0 : at + 1;
        int frame = calm == 2 * WINDOW ? pack(left[out], right[out]) : soften(out);
        at = out;
        return frame;
    }

    private int soften(int out) {
        double least = 1;
        double sum = 0;
        for (int i = 0; i < WINDOW; i++) {
            least = Math.min(least, wanted[i]);
        }
        gain = Math.min(least, gain + (1 - gain) * RELEASE);
        gain = least == 1 && gain > NEARLY_OPEN ? 1 : gain;
        released[out] = gain;
        for (int i = 0; i < WINDOW; i++) {
            sum += released[i];
        }
        double mean = sum / WINDOW;
        return pack(scaled(left[out], mean), scaled(right[out], mean));
    }

    private static short scaled(short sample, double factor) {
        long size = Math.round(sample * factor);
        return (short) Math.max(-CEILING, Math.min(CEILING, size));
    }

    private static int pack(short left, short right) {
        return right << 16 | left & 0xFFFF;
    }
}
