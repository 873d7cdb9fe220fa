package monochord.bank;

/**
 * How far a note is from equal temperament at A4 = 440 Hz (ISO 16:1975), by its first partials. Those of a low string are
 * weighed by their strength, for its fundamental is hardly heard; from middle C up the fundamental alone counts.
 */
final class Tuning {
    private static final int MIDDLE_C = 60;
    private static final int PARTIALS = 3;
    private static final double FROM_SECONDS = 0.1;
    private static final double SECONDS = 1.2;
    private static final double FARTHEST_CENTS = 60;
    private static final double AROUND_CENTS = 25;
    private static final double STEP_CENTS = 1;

    private final double[] windowed;
    private final double rate;

    private Tuning(Sound sound) {
        double[] heard = sound.played(FROM_SECONDS + SECONDS);
        int from = (int) (FROM_SECONDS * sound.rate());
        windowed = new double[heard.length - from];
        for (int i = 0; i < windowed.length; i++) {
            double turn = 2 * StrictMath.PI * i / windowed.length;
            windowed[i] = heard[from + i] * (1 - StrictMath.cos(turn));
        }
        rate = sound.rate();
    }

    /** Cents above the key; below it, negative. */
    static double centsOff(Sound sound, int key) {
        Tuning tuning = new Tuning(sound);
        double hertz = hertz(key);
        double cents = 0;
        double all = 0;
        for (int partial = 1; partial <= (key < MIDDLE_C ? PARTIALS : 1); partial++) {
            double off = tuning.centsOff(partial * hertz);
            double strength = tuning.at(partial * hertz * StrictMath.pow(2, off / 1200));
            cents += off * strength * strength;
            all += strength * strength;
        }
        return cents / all;
    }

    static double hertz(double key) {
        return 440 * StrictMath.pow(2, (key - 69) / 12);
    }

    /** The middle of what sounds around the strongest place near a frequency: an ensemble has many. */
    private double centsOff(double hertz) {
        double strongest = 0;
        double most = 0;
        for (double cents = -FARTHEST_CENTS; cents <= FARTHEST_CENTS; cents += STEP_CENTS) {
            double strength = at(hertz * StrictMath.pow(2, cents / 1200));
            if (strength > most) {
                most = strength;
                strongest = cents;
            }
        }
        double sum = 0;
        double all = 0;
        for (double cents = strongest - AROUND_CENTS; cents <= strongest + AROUND_CENTS; cents += STEP_CENTS) {
            double strength = at(hertz * StrictMath.pow(2, cents / 1200));
            sum += cents * strength * strength;
            all += strength * strength;
        }
        return sum / all;
    }

    /** The strength of one frequency. */
    private double at(double hertz) {
        double cos = StrictMath.cos(2 * StrictMath.PI * hertz / rate);
        double last = 0;
        double lastButOne = 0;
        for (double sample : windowed) {
            double now = sample + 2 * cos * last - lastButOne;
            lastButOne = last;
            last = now;
        }
        return StrictMath.sqrt(last * last + lastButOne * lastButOne - 2 * cos * last * lastButOne);
    }
}
