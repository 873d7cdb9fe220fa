package monochord.sound;

import java.io.IOException;

/**
 * How loud sound is: the mean power of its tenths of a second, those left out that are more than 40 dB below the loudest.
 *
 * <p>What is loud for a while counts and what is silent does not, as in the gated measure of ITU-R BS.1770, without its
 * filter for the ear; from memory.
 */
final class Loudness {
    private static final int BLOCK_BYTES = JavaSound.RATE / 10 * JavaSound.FRAME_BYTES;
    private static final int MOST_BLOCKS = 600;
    private static final double GATE = 1e-4;
    private static final double SILENCE = 1e-12;

    private Loudness() {}

    /**
     * Of the first minute of a performance.
     *
     * @return decibels below full scale, so below 0; negative infinity for silence
     * @throws IOException if it cannot be rendered
     */
    static double of(Performance performance) throws IOException {
        int blocks = (int) Math.min(MOST_BLOCKS, Math.ceil(performance.seconds() * 10));
        double[] powers = new double[blocks];
        byte[] block = new byte[BLOCK_BYTES];
        try (Rendering rendering = Rendering.of(performance.sequence(), performance.bank())) {
            for (int i = 0; i < blocks; i++) {
                powers[i] = power(block, rendering.read(block));
            }
        }
        return decibels(powers);
    }

    private static double power(byte[] sound, int bytes) {
        double sum = 0;
        for (int i = 0; i < bytes; i += 2) {
            double sample = (sound[i + 1] << 8 | sound[i] & 0xFF) / 32_768.0;
            sum += sample * sample;
        }
        return bytes == 0 ? 0 : 2 * sum / bytes;
    }

    private static double decibels(double[] powers) {
        double loudest = 0;
        for (double power : powers) {
            loudest = Math.max(loudest, power);
        }
        double sum = 0;
        int counted = 0;
        for (double power : powers) {
            if (power > loudest * GATE) {
                sum += power;
                counted++;
            }
        }
        return loudest < SILENCE ? Double.NEGATIVE_INFINITY : 10 * Math.log10(sum / counted);
    }
}
