package monochord.bank;

import java.util.Arrays;

/**
 * Ends a recording in a loop that no ear finds: the end of the loop is faded into what comes before its beginning, where
 * both are as alike as can be, and what dies away is held at its level there, for the player's envelope to let it die.
 *
 * @param longest seconds until the loop ends, at most
 * @param least seconds that go round, at least
 * @param most seconds that go round, at most
 * @param dies whether the sound dies away; only as far as the source's own loop has it done so
 */
record Looping(double longest, double least, double most, boolean dies) {
    private static final double COMPARED_SECONDS = 0.03;
    private static final int COARSE = 4;
    private static final double SLICE_SECONDS = 0.05;
    /** What is struck, bowed or breathed in before the note stands is not faded in again. */
    private static final double BEGINNING_SECONDS = 0.12;

    /** @return the sound cut and looped, with how fast it died away at the loop, in decibels a second */
    Looped cut(Sound source) {
        double rate = source.rate();
        double[] wave = source.played(Math.min(longest, (dies ? source.loopStart() : source.loopEnd()) / rate));
        int end = wave.length;
        int length = mostAlike(wave, end, rate);
        int start = end - length;
        double falls = dies ? Math.max(0, falls(wave, Math.max(0, start - length), end, rate)) : 0;
        int fade = Math.min(length, start - (int) (BEGINNING_SECONDS * rate)) * 3 / 4;
        double[] looped = wave.clone();
        double alike = alike(wave, end, length, fade);
        for (int i = start; i < end; i++) {
            looped[i] = wave[i] * raised(falls, i - start, rate);
        }
        for (int i = end - fade; i < end; i++) {
            double in = (i - (end - fade) + 1.0) / fade;
            double before = wave[i - length] * raised(falls, i - length - start, rate);
            double out = 1 - in;
            looped[i] = (looped[i] * out + before * in) / StrictMath.sqrt(out * out + in * in + 2 * out * in * alike);
        }
        return new Looped(new Sound(looped, rate, start, end), falls);
    }

    private static double raised(double falls, int samples, double rate) {
        return StrictMath.pow(10, falls * samples / rate / 20);
    }

    private int mostAlike(double[] wave, int end, double rate) {
        int window = (int) (COMPARED_SECONDS * rate);
        int from = (int) (least * rate);
        int to = Math.min((int) (most * rate), (end - window) / 2);
        int best = best(wave, end, window, new int[] {from, to, COARSE});
        return best(wave, end, window, new int[] {Math.max(from, best - COARSE), best + COARSE, 1});
    }

    private static int best(double[] wave, int end, int window, int[] range) {
        int best = range[0];
        double most = Double.NEGATIVE_INFINITY;
        for (int length = range[0]; length <= range[1]; length += range[2]) {
            double alike = alike(wave, end, length, window);
            if (alike > most) {
                most = alike;
                best = length;
            }
        }
        return best;
    }

    /** From -1 to 1: how like what is before the end is to what is as long before the beginning. */
    private static double alike(double[] wave, int end, int length, int window) {
        double both = 0;
        double one = 1e-12;
        double other = 1e-12;
        for (int i = end - window; i < end; i++) {
            both += wave[i] * wave[i - length];
            one += wave[i] * wave[i];
            other += wave[i - length] * wave[i - length];
        }
        return Math.max(0, both / StrictMath.sqrt(one * other));
    }

    /** The slope of the best line through the levels of slices, turned round. */
    private static double falls(double[] wave, int from, int to, double rate) {
        int slice = (int) (SLICE_SECONDS * rate);
        int slices = (to - from) / slice;
        double[] level = new double[Math.max(1, slices)];
        for (int i = 0; i < slices; i++) {
            double[] part = Arrays.copyOfRange(wave, from + i * slice, from + (i + 1) * slice);
            level[i] = 10 * StrictMath.log10(Arrays.stream(part).map(s -> s * s).sum() / slice + 1e-12);
        }
        return slices < 3 ? 0 : -Line.through(level).slope() / SLICE_SECONDS;
    }

    /** @param falls decibels a second */
    record Looped(Sound sound, double falls) {}
}
