package monochord.sound.level;

/**
 * The filter for the ear that loudness is measured through, for one channel: a rise of 4 dB for what is high, as a head
 * makes it, and a fall below 38 Hz.
 *
 * <p>Source: ITU-R BS.1770-4, 2015, Annex 1, tables 1 and 2, which give it for 48,000 samples a second; for other rates
 * it is led back to its analogue form and from there to the rate, by the bilinear transform both times.
 */
final class Weighting {
    private static final double SOURCE_RATE = 48_000;
    private static final double[] SHELF = {1.53512485958697, -2.69169618940638, 1.19839281085285};
    private static final double[] SHELF_BACK = {1, -1.69065929318241, 0.73248077421585};
    private static final double[] PASS = {1, -2, 1};
    private static final double[] PASS_BACK = {1, -1.99004745483398, 0.99007225036621};

    private final Biquad shelf;
    private final Biquad pass;

    Weighting(double rate) {
        shelf = new Biquad(at(rate, SHELF), at(rate, SHELF_BACK));
        pass = new Biquad(at(rate, PASS), at(rate, PASS_BACK));
    }

    double next(double sample) {
        return pass.next(shelf.next(sample));
    }

    /** Of a polynomial in the delay 1/z at 48,000 Hz, the one at another rate; both sides of a filter go the same way. */
    private static double[] at(double rate, double[] source) {
        double k = rate / SOURCE_RATE;
        double constant = source[0] + source[1] + source[2];
        double linear = 2 * k * (source[0] - source[2]);
        double square = k * k * (source[0] - source[1] + source[2]);
        return new double[] {constant + linear + square, 2 * (constant - square), constant - linear + square};
    }

    /** Two delays forward and two back. */
    private static final class Biquad {
        private final double[] forward = new double[3];
        private final double[] back = new double[3];
        private double first;
        private double second;

        Biquad(double[] forward, double[] back) {
            for (int i = 0; i < 3; i++) {
                this.forward[i] = forward[i] / back[0];
                this.back[i] = back[i] / back[0];
            }
        }

        double next(double in) {
            double out = forward[0] * in + first;
            first = forward[1] * in - back[1] * out + second;
            second = forward[2] * in - back[2] * out;
            return out;
        }
    }
}
