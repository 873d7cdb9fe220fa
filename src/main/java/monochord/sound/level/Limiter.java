package monochord.sound.level;

import java.util.Arrays;

/**
 * Keeps sound below a ceiling by looking a little ahead: it turns down smoothly before a peak comes, and up again slowly
 * after it. What stays below the ceiling passes untouched.
 *
 * <p>The gain of a frame is the mean, over the frames looked ahead, of gains that would each do for it; so it is itself
 * small enough, and never jumps. Look-ahead limiting is common practice, no source.
 */
public final class Limiter {
    /**
     * The highest true peak, 2 dB below full scale: what comes of coding it small may be a little higher, and stays under
     * the 1 dB that EBU R 128 asks for.
     */
    public static final float CEILING = 0.794f;

    private static final int WINDOW = 221;
    /** By how many frames what goes out is late, 5 ms. */
    public static final int AHEAD = WINDOW - 1 + TruePeak.LATE;

    /** Four fifths of the way back in a quarter of a second. */
    private static final double RELEASE = 1.5e-4;

    private static final double NEARLY_OPEN = 0.9999;
    /** 3 dB below the ceiling: what has no sample there does not rise to it between two. */
    private static final double LOUD = CEILING * 0.7;

    private final TruePeak leftPeak = new TruePeak();
    private final TruePeak rightPeak = new TruePeak();
    private final float[] left = new float[AHEAD + 1];
    private final float[] right = new float[AHEAD + 1];
    private final LeastOf wanted = new LeastOf(WINDOW);
    private final double[] released = new double[WINDOW];
    private double sum = WINDOW;
    private double gain = 1;
    private int oldestGain;
    /** Frames for which nothing has had to be turned down. */
    private int calm;

    private int at;
    private float outLeft;
    private float outRight;

    public Limiter() {
        Arrays.fill(released, 1);
    }

    /** Takes the next frame; the one {@link #AHEAD} before it, made soft enough, is then {@link #left} and {@link #right}. */
    public void next(float newLeft, float newRight) {
        left[at] = newLeft;
        right[at] = newRight;
        at = at == AHEAD ? 0 : at + 1;
        double peak = Math.max(leftPeak.next(newLeft, LOUD), rightPeak.next(newRight, LOUD));
        calm = peak > CEILING || gain < 1 ? 0 : calm + 1;
        if (calm > 2 * WINDOW) {
            calm = 2 * WINDOW;
            outLeft = left[at];
            outRight = right[at];
        } else {
            soften(peak > CEILING ? CEILING / peak : 1);
        }
    }

    private void soften(double wantedGain) {
        double least = wanted.next(wantedGain);
        gain = Math.min(least, gain + (1 - gain) * RELEASE);
        gain = least == 1 && gain > NEARLY_OPEN ? 1 : gain;
        double mean = mean();
        outLeft = held(left[at] * mean);
        outRight = held(right[at] * mean);
    }

    /** Of the gains of a window; 1 exactly when all are. */
    private double mean() {
        sum += gain - released[oldestGain];
        released[oldestGain] = gain;
        oldestGain = oldestGain + 1 == WINDOW ? 0 : oldestGain + 1;
        double mean = sum / WINDOW;
        return mean > NEARLY_OPEN && gain == 1 ? 1 : Math.min(1, mean);
    }

    private static float held(double sample) {
        return (float) Math.max(-CEILING, Math.min(CEILING, sample));
    }

    public float left() {
        return outLeft;
    }

    public float right() {
        return outRight;
    }
}
