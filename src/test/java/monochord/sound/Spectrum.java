package monochord.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** What frequencies a stretch of sound holds: a discrete Fourier transform at any frequency, under a Hann window. */
public final class Spectrum {
    private static final int RATE = 44_100;
    private static final double CENT = Math.pow(2, 1 / 1200.0);

    private final double[] windowed;

    /** @param samples at 44,100 a second */
    public Spectrum(double[] samples) {
        windowed = new double[samples.length];
        for (int i = 0; i < samples.length; i++) {
            windowed[i] = samples[i] * (1 - Math.cos(2 * Math.PI * i / samples.length));
        }
    }

    /** The mean of both channels, from 16-bit stereo frames. */
    static double[] mono(byte[] pcm, double fromSecond, double toSecond) {
        ByteBuffer frames = ByteBuffer.wrap(pcm).order(ByteOrder.LITTLE_ENDIAN);
        int first = (int) (fromSecond * RATE);
        double[] samples = new double[(int) (toSecond * RATE) - first];
        for (int i = 0; i < samples.length; i++) {
            int at = 4 * (first + i);
            samples[i] = (frames.getShort(at) + frames.getShort(at + 2)) / 2.0;
        }
        return samples;
    }

    static double loudest(double[] samples) {
        double peak = 0;
        for (double sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return peak;
    }

    /** The amplitude of a sine of this frequency. */
    public double at(double hertz) {
        double cos = Math.cos(2 * Math.PI * hertz / RATE);
        double sin = Math.sin(2 * Math.PI * hertz / RATE);
        double x = 1;
        double y = 0;
        double real = 0;
        double imaginary = 0;
        for (double sample : windowed) {
            real += sample * x;
            imaginary += sample * y;
            double turned = x * cos - y * sin;
            y = x * sin + y * cos;
            x = turned;
        }
        return 2 * Math.hypot(real, imaginary) / windowed.length;
    }

    /** How many cents above {@code hertz} the strongest frequency within 40 cents of it lies. */
    public int centsOff(double hertz) {
        int best = -40;
        double strongest = 0;
        for (int cents = -40; cents <= 40; cents++) {
            double amplitude = at(hertz * Math.pow(CENT, cents));
            if (amplitude > strongest) {
                strongest = amplitude;
                best = cents;
            }
        }
        return best;
    }

    /** Decibels by which one frequency is stronger than another. */
    public double decibelsOver(double hertz, double other) {
        return 20 * Math.log10(at(hertz) / at(other));
    }
}
