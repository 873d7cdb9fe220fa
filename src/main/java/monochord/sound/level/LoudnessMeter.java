package monochord.sound.level;

import java.util.Arrays;

/**
 * Measures integrated loudness in LUFS: the mean power, through the filter for the ear, of the blocks of 400 ms that are
 * above -70 LUFS and not more than 10 LU below the mean of those.
 *
 * <p>Source: ITU-R BS.1770-4, 2015, Annex 1; EBU R 128, 2020. Tested with the signals of EBU Tech 3341, 2016, table 1.
 */
public final class LoudnessMeter {
    private static final int STEPS_PER_SECOND = 10;
    private static final int STEPS_PER_BLOCK = 4;
    private static final double ABSOLUTE_GATE = -70;
    private static final double RELATIVE_GATE = -10;
    private static final double OFFSET = -0.691;

    private final Weighting left;
    private final Weighting right;
    private final int framesPerStep;
    private double[] powers = new double[600];
    private int steps;
    private double sum;
    private int frames;

    /** @param rate frames a second */
    public LoudnessMeter(int rate) {
        left = new Weighting(rate);
        right = new Weighting(rate);
        framesPerStep = rate / STEPS_PER_SECOND;
    }

    public void add(float newLeft, float newRight) {
        double one = left.next(newLeft);
        double other = right.next(newRight);
        sum += one * one + other * other;
        if (++frames == framesPerStep) {
            step();
        }
    }

    private void step() {
        if (steps == powers.length) {
            powers = Arrays.copyOf(powers, 2 * steps);
        }
        powers[steps++] = sum / framesPerStep;
        sum = 0;
        frames = 0;
    }

    /**
     * Of all that was added; what lasts less than a block counts as a block that ends in silence.
     *
     * @return negative infinity if nothing was above the gate
     */
    public double lufs() {
        double[] blocks = blocks();
        double gate = loudness(mean(blocks, power(ABSOLUTE_GATE))) + RELATIVE_GATE;
        return loudness(mean(blocks, power(Math.max(gate, ABSOLUTE_GATE))));
    }

    private double[] blocks() {
        double[] known = Arrays.copyOf(powers, Math.max(STEPS_PER_BLOCK, steps));
        if (steps < STEPS_PER_BLOCK) {
            known[steps] = sum / framesPerStep;
        }
        double[] blocks = new double[known.length - STEPS_PER_BLOCK + 1];
        for (int i = 0; i < blocks.length; i++) {
            blocks[i] = Arrays.stream(known, i, i + STEPS_PER_BLOCK).sum() / STEPS_PER_BLOCK;
        }
        return blocks;
    }

    private static double mean(double[] blocks, double gate) {
        return Arrays.stream(blocks).filter(power -> power > gate).average().orElse(0);
    }

    private static double loudness(double power) {
        return OFFSET + 10 * Math.log10(power);
    }

    private static double power(double loudness) {
        return Math.pow(10, (loudness - OFFSET) / 10);
    }
}
