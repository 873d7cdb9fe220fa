package monochord.sound.level;

/**
 * The highest a channel rises between its samples: three values are interpolated between each two.
 *
 * <p>Source: ITU-R BS.1770-4, 2015, Annex 2, which asks for four times the rate and twelve samples for each value; the
 * weights here are a sinc under a Hann window.
 */
final class TruePeak {
    /** By how many samples the answer is late. */
    static final int LATE = 6;

    private static final int TAPS = 2 * LATE;
    private static final int TIMES = 4;
    private static final double[][] WEIGHTS = weights();

    private final float[] samples = new float[TAPS];
    private int at;
    private float highest;
    private int since;

    private static double[][] weights() {
        double[][] weights = new double[TIMES - 1][TAPS];
        for (int phase = 1; phase < TIMES; phase++) {
            for (int tap = 0; tap < TAPS; tap++) {
                double away = tap - (LATE - 1) - (double) phase / TIMES;
                double window = 0.5 + 0.5 * Math.cos(Math.PI * away / LATE);
                weights[phase - 1][tap] = window * Math.sin(Math.PI * away) / (Math.PI * away);
            }
        }
        return weights;
    }

    /**
     * Takes the next sample.
     *
     * @param loud where no sample is as high, the samples speak for what lies between
     * @return the highest from the sample {@value #LATE} before it to the one after that, both included; where all is soft, of
     *     those around them, too
     */
    double next(float sample, double loud) {
        samples[at] = sample;
        at = at + 1 == TAPS ? 0 : at + 1;
        remember(Math.abs(sample));
        return highest > loud ? between() : highest;
    }

    private double between() {
        double peak = Math.max(Math.abs(sample(LATE - 1)), Math.abs(sample(LATE)));
        for (double[] phase : WEIGHTS) {
            double value = 0;
            for (int tap = 0; tap < TAPS; tap++) {
                value += phase[tap] * sample(tap);
            }
            peak = Math.max(peak, Math.abs(value));
        }
        return peak;
    }

    /** The highest of the last twelve; of a few more while none is as high. */
    private void remember(float size) {
        if (size >= highest) {
            highest = size;
            since = 0;
        } else if (++since > TAPS) {
            highest = 0;
            since = 0;
            for (float one : samples) {
                highest = Math.max(highest, Math.abs(one));
            }
        }
    }

    /** From 0, the oldest, on. */
    private float sample(int place) {
        int wrapped = at + place;
        return samples[wrapped >= TAPS ? wrapped - TAPS : wrapped];
    }
}
