package monochord.sound;

import java.io.IOException;
import java.util.Optional;
import javax.sound.midi.Sequence;
import monochord.sound.level.LoudnessMeter;
import monochord.sound.level.Target;

/**
 * How loud a sequence will be, before it is heard: its first half minute, rendered roughly and measured. Rough is within
 * half a decibel, and takes a tenth of the time.
 */
final class Loudness {
    private static final int MOST_SECONDS = 30;
    private static final int PIECE_SAMPLES = 4096;
    /** What the room that is heard, and left out here, adds; measured over the bank's instruments. */
    private static final double ROOM_DECIBELS = 0.2;

    private Loudness() {}

    /**
     * @return in LUFS; negative infinity for silence
     * @throws IOException if it cannot be rendered
     */
    static double of(Sequence sequence, Optional<Bank> bank) throws IOException {
        int rate = Synthesis.Quality.MEASURED.rate();
        long left = 2L * rate * Math.min(MOST_SECONDS, 1 + sequence.getMicrosecondLength() / 1_000_000);
        LoudnessMeter meter = new LoudnessMeter(rate);
        float[] piece = new float[PIECE_SAMPLES];
        try (Rendering rendering = Rendering.of(sequence, bank, Synthesis.Quality.MEASURED)) {
            for (int read = rendering.read(piece); read > 0 && left > 0; read = rendering.read(piece)) {
                for (int i = 0; i < read; i += 2) {
                    meter.add(piece[i], piece[i + 1]);
                }
                left -= read;
            }
        }
        return meter.lufs() + ROOM_DECIBELS;
    }

    static double of(Performance performance) throws IOException {
        return of(performance.sequence(), performance.bank());
    }

    /** The factor that brings a sequence to the level of all. */
    static double gain(Sequence sequence, Optional<Bank> bank) throws IOException {
        return Target.gain(of(sequence, bank));
    }
}
