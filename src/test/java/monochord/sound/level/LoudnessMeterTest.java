package monochord.sound.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LoudnessMeterTest {
    private static final int RATE = 44_100;

    /** Of both channels alike, a sine of 1000 Hz that has these peaks for so long, in turn. */
    private static double measured(int rate, String decibelsAndSeconds) {
        LoudnessMeter meter = new LoudnessMeter(rate);
        long frame = 0;
        for (String part : decibelsAndSeconds.split(" ")) {
            double peak = Math.pow(10, Double.parseDouble(part.split("/")[0]) / 20);
            long end = frame + Math.round(Double.parseDouble(part.split("/")[1]) * rate);
            for (; frame < end; frame++) {
                float sample = (float) (peak * Math.sin(2 * Math.PI * 1000 * frame / rate));
                meter.add(sample, sample);
            }
        }
        return meter.lufs();
    }

    /** Source: EBU Tech 3341, version 3, 2016, table 1, cases 1 to 5, each within 0.1 LU; from memory. */
    @ParameterizedTest(name = "{0} is {1} LUFS")
    @CsvSource({
        "-23/20, -23",
        "-33/20, -33",
        "-36/10 -23/60 -36/10, -23",
        "-72/10 -36/10 -23/60 -36/10 -72/10, -23",
        "-26/20 -20/20.1 -26/20, -23"
    })
    void readsTheBroadcastersSignals(String signal, double lufs) {
        assertEquals(lufs, measured(RATE, signal), 0.1);
    }

    @ParameterizedTest
    @ValueSource(ints = {48_000, 44_100, 22_050, 11_025})
    void theRateDoesNotMatter(int rate) {
        assertEquals(-23, measured(rate, "-23/5"), 0.1);
    }

    /** Source: ITU-R BS.1770-4, Annex 1: a sine of 997 Hz at full scale in one channel reads -3.01 LKFS. */
    @Test
    void oneChannelIsHalfAsMuch() {
        LoudnessMeter meter = new LoudnessMeter(RATE);
        for (int i = 0; i < 5 * RATE; i++) {
            meter.add((float) Math.sin(2 * Math.PI * 997 * i / RATE), 0);
        }
        assertEquals(-3.01, meter.lufs(), 0.05);
    }

    @Test
    void whatIsShorterThanABlockIsMeasuredAllTheSame() {
        assertEquals(-23 - 6.02, measured(RATE, "-23/0.1"), 0.3);
    }

    @Test
    void silenceIsInfinitelySoftAndLeftAsItIs() {
        assertEquals(Double.NEGATIVE_INFINITY, measured(RATE, "-90/5"));
        assertEquals(Double.NEGATIVE_INFINITY, new LoudnessMeter(RATE).lufs());
        assertEquals(1, LoudnessTarget.gain(Double.NEGATIVE_INFINITY));
    }

    @Test
    void theGainBringsAnythingToEighteenBelow() {
        assertEquals(2, LoudnessTarget.gain(-18 - 6.0206), 1e-4);
        assertEquals(0.5, LoudnessTarget.gain(-18 + 6.0206), 1e-4);
        assertEquals(316.2, LoudnessTarget.gain(-69.5), 0.1, "but noise is not blown up without end");
    }
}
