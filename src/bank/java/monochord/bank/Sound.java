package monochord.bank;

import java.util.Arrays;

/**
 * A recorded note: a beginning that is heard once and a stretch that then goes round.
 *
 * @param wave from -1 to 1
 * @param rate samples a second
 * @param loopStart first sample of what goes round
 * @param loopEnd behind its last
 */
record Sound(double[] wave, double rate, int loopStart, int loopEnd) {
    /** Samples of the source on either side that make one of the new, at least. */
    private static final int REACH = 24;

    private static final double PASSED = 0.95;

    /** What is heard of it for so long, the loop going round. */
    double[] played(double seconds) {
        double[] heard = Arrays.copyOf(wave, (int) (seconds * rate));
        for (int i = loopEnd; i < heard.length; i++) {
            heard[i] = heard[i - (loopEnd - loopStart)];
        }
        return heard;
    }

    Sound times(double factor) {
        return new Sound(Arrays.stream(wave).map(sample -> sample * factor).toArray(), rate, loopStart, loopEnd);
    }

    /** From the first sample that is a fiftieth as high as the highest, less a thousandth of a second to rise in. */
    Sound trimmed() {
        double peak = peak();
        int first = 0;
        while (Math.abs(wave[first]) < peak / 50) {
            first++;
        }
        int rise = (int) (rate / 1000);
        int cut = Math.max(0, first - rise);
        double[] rest = Arrays.copyOfRange(wave, cut, wave.length);
        for (int i = 0; cut > 0 && i < rise; i++) {
            rest[i] *= (double) i / rise;
        }
        return new Sound(rest, rate, loopStart - cut, loopEnd - cut);
    }

    /**
     * The same with fewer samples, or faster or slower: so that the loop stays a whole number of samples, the rate comes
     * near what is wanted and is then exact.
     *
     * @param wanted samples a second
     */
    Sound at(double wanted) {
        int loop = (int) Math.max(1, StrictMath.rint((loopEnd - loopStart) * wanted / rate));
        double step = (double) (loopEnd - loopStart) / loop;
        int start = (int) (loopStart / step);
        double[] source = played((loopEnd + 4.0 * REACH * step) / rate);
        double[] fewer = new double[start + loop];
        for (int i = 0; i < fewer.length; i++) {
            fewer[i] = between(source, loopStart + (i - start) * step, Math.max(1, step));
        }
        return new Sound(fewer, rate / step, start, start + loop);
    }

    /** The value between samples: a sinc under a Hann window, which lets pass what the new rate can hold. */
    private static double between(double[] source, double place, double step) {
        double reach = REACH * step;
        double sum = 0;
        for (int i = (int) StrictMath.ceil(place - reach); i <= place + reach; i++) {
            if (i >= 0 && i < source.length) {
                double away = place - i;
                double window = 0.5 + 0.5 * StrictMath.cos(StrictMath.PI * away / reach);
                sum += source[i] * window * sinc(PASSED * away / step);
            }
        }
        return sum * PASSED / step;
    }

    private static double sinc(double x) {
        return Math.abs(x) < 1e-9 ? 1 : StrictMath.sin(StrictMath.PI * x) / (StrictMath.PI * x);
    }

    double peak() {
        return Arrays.stream(wave).map(Math::abs).max().orElseThrow();
    }

    /** Its mean power from its beginning, in decibels below full scale. */
    double decibels(double seconds) {
        return 10
                * StrictMath.log10(Arrays.stream(played(seconds))
                                .map(sample -> sample * sample)
                                .average()
                                .orElseThrow()
                        + 1e-12);
    }
}
