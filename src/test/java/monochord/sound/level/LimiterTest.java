package monochord.sound.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class LimiterTest {
    private static final int SECOND = 44_100;

    /** One second on both channels; the left is what comes out. */
    private static float[] limited(IntToDoubleFunction wave) {
        Limiter limiter = new Limiter();
        float[] out = new float[SECOND];
        for (int i = 0; i < SECOND + Limiter.AHEAD; i++) {
            limiter.next((float) wave.applyAsDouble(i), (float) wave.applyAsDouble(i));
            if (i >= Limiter.AHEAD) {
                out[i - Limiter.AHEAD] = limiter.left();
                assertEquals(limiter.left(), limiter.right());
            }
        }
        return out;
    }

    private static IntToDoubleFunction sine(double size) {
        return i -> size * Math.sin(2 * Math.PI * 220 * i / SECOND);
    }

    @Test
    void whatIsSoftEnoughPassesUntouched() {
        float[] out = limited(sine(0.79));
        for (int i = 0; i < out.length; i++) {
            assertEquals((float) sine(0.79).applyAsDouble(i), out[i], "frame " + i);
        }
    }

    @Test
    void whatIsTooLoudStaysUnderTheCeilingWithoutABreak() {
        IntToDoubleFunction wave = i -> i > SECOND / 3 && i < SECOND / 2
                ? sine(3).applyAsDouble(i)
                : sine(0.1).applyAsDouble(i);
        float highest = 0;
        for (float sample : limited(wave)) {
            highest = Math.max(highest, Math.abs(sample));
        }
        assertTrue(highest <= Limiter.CEILING, "it rises to " + highest);
        assertTrue(highest > Limiter.CEILING * 0.9, "it is still loud: " + highest);
    }

    /** The gain moves by less than one part in a hundred from frame to frame. */
    @Test
    void theGainNeverJumps() {
        float[] out = limited(i -> i == SECOND / 2 ? 1 : 0.6);
        for (int i = 1; i < SECOND; i++) {
            if (i != SECOND / 2 && i != SECOND / 2 + 1) {
                assertTrue(Math.abs(out[i] - out[i - 1]) < 0.006, "frame " + i + ": " + out[i - 1] + " to " + out[i]);
            }
        }
        assertEquals(0.6f, out[100]);
        assertTrue(out[SECOND - 1] > 0.595, "it comes back: " + out[SECOND - 1]);
    }

    /** A sine of a quarter of the rate whose samples all lie half way up: it rises 3 dB between them. */
    @Test
    void whatRisesBetweenTheSamplesCounts() {
        IntToDoubleFunction quarter = i -> 0.9 * Math.sin(Math.PI / 2 * i + Math.PI / 4);
        float[] out = limited(quarter);
        float highest = 0;
        for (int i = SECOND / 10; i < SECOND; i++) {
            highest = Math.max(highest, Math.abs(out[i]));
        }
        assertEquals(Limiter.CEILING / Math.sqrt(2), highest, 0.01);
    }

    /** Source: EBU Tech 3341, 2016, table 1, cases 15, 16 and 19, from memory: true peak within +0.2 and -0.4 dB. */
    @Test
    void theTruePeakIsMeasured() {
        assertPeak(0.5, 4, 0);
        assertPeak(0.5, 4, 45);
        assertPeak(1.41, 4, 45);
    }

    private static void assertPeak(double size, int part, double degrees) {
        TruePeak meter = new TruePeak();
        double peak = 0;
        for (int i = 0; i < SECOND; i++) {
            double sample = size * Math.sin(2 * Math.PI * i / part + Math.toRadians(degrees));
            double swell = Math.min(1, Math.min(i, SECOND - i) / 2000.0);
            peak = Math.max(peak, meter.next((float) (swell * sample), size / 4));
        }
        double off = 20 * Math.log10(peak / size);
        assertTrue(off < 0.2 && off > -0.4, "a peak of " + size + " is read " + off + " dB off");
    }
}
