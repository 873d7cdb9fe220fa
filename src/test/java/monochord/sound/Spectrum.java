package monochord.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** What frequencies a stretch of sound holds: a discrete Fourier transform at any frequency, under a Hann window. */
public final class Spectrum {
    private static final int RATE = 44_100;
    /** Samples. */
    private static final int STRETCH = 64;

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
    public static double[] mono(byte[] pcm, double fromSecond, double toSecond) {
        ByteBuffer frames = ByteBuffer.wrap(pcm).order(ByteOrder.LITTLE_ENDIAN);
        int first = (int) (fromSecond * RATE);
        double[] samples = new double[(int) (toSecond * RATE) - first];
        for (int i = 0; i < samples.length; i++) {
            int at = 4 * (first + i);
            samples[i] = (frames.getShort(at) + frames.getShort(at + 2)) / 2.0;
        }
        return samples;
    }

    public static double loudest(double[] samples) {
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
        double[][] beats = beats(hertz);
        int best = -40;
        double strongest = 0;
        for (int cents = -40; cents <= 40; cents++) {
            double amplitude = at(hertz * (Math.pow(CENT, cents) - 1), beats);
            if (amplitude > strongest) {
                strongest = amplitude;
                best = cents;
            }
        }
        return best;
    }

    /**
     * The samples turned back by this frequency, so that what sounds near it turns slowly, and summed in stretches of
     * {@value #STRETCH}: as little as 40 cents turn one by less than a twentieth of a circle, up to 1,200 hertz.
     */
    private double[][] beats(double hertz) {
        double cos = Math.cos(2 * Math.PI * hertz / RATE);
        double sin = Math.sin(2 * Math.PI * hertz / RATE);
        double[][] beats = new double[2][windowed.length / STRETCH + 1];
        double x = 1;
        double y = 0;
        for (int i = 0; i < windowed.length; i++) {
            beats[0][i / STRETCH] += windowed[i] * x;
            beats[1][i / STRETCH] += windowed[i] * y;
            double turned = x * cos - y * sin;
            y = x * sin + y * cos;
            x = turned;
        }
        return beats;
    }

    private static double at(double hertz, double[][] beats) {
        double cos = Math.cos(2 * Math.PI * hertz * STRETCH / RATE);
        double sin = Math.sin(2 * Math.PI * hertz * STRETCH / RATE);
        double real = 0;
        double imaginary = 0;
        for (int i = beats[0].length - 1; i >= 0; i--) {
            double turned = beats[0][i] + real * cos - imaginary * sin;
            imaginary = beats[1][i] + real * sin + imaginary * cos;
            real = turned;
        }
        return Math.hypot(real, imaginary);
    }

    /** Decibels by which one frequency is stronger than another. */
    public double decibelsOver(double hertz, double other) {
        return 20 * Math.log10(at(hertz) / at(other));
    }
}
