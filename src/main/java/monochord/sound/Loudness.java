package monochord.sound;

import java.io.IOException;
import java.util.Optional;
import javax.sound.midi.Sequence;
import monochord.sound.level.LoudnessMeter;

/**
 * How loud a sequence will be, before it is heard: rendered roughly and measured. Rough is within half a decibel, and takes
 * a third of the time.
 */
public final class Loudness implements AutoCloseable {
    private static final int MOST_SECONDS = 30;
    private static final int PIECE_SAMPLES = 4096;
    private static final int RATE = Synthesis.Quality.MEASURED.rate();
    /** What the room that is heard, and left out here, adds; measured over the bank's instruments. */
    private static final double ROOM_DECIBELS = 0.15;

    private final Rendering rendering;
    private final LoudnessMeter meter = new LoudnessMeter(RATE);
    private final float[] piece = new float[PIECE_SAMPLES];
    private final long music;
    private long frames;

    /** @throws IOException if it cannot be rendered */
    public Loudness(Sequence sequence, Optional<Bank> bank) throws IOException {
        rendering = Rendering.of(sequence, bank, Synthesis.Quality.MEASURED);
        music = sequence.getMicrosecondLength() * RATE / 1_000_000;
    }

    /**
     * Of the first half minute of a performance, without the clicks that count it in.
     *
     * @return in LUFS; negative infinity for silence
     * @throws IOException if it cannot be rendered
     */
    static double of(Performance performance) throws IOException {
        try (Loudness loudness = new Loudness(performance.countedIn(false).sequence(), performance.bank())) {
            return loudness.through(MOST_SECONDS);
        }
    }

    /**
     * Goes on until then, or until the music is over.
     *
     * @return in LUFS, of all up to there; negative infinity for silence
     * @throws IOException if it cannot be rendered
     */
    public double through(int seconds) throws IOException {
        long end = Math.min(music, (long) seconds * RATE);
        while (frames < end) {
            int read = rendering.read(piece);
            for (int i = 0; i < read && frames < end; i += 2) {
                meter.add(piece[i], piece[i + 1]);
                frames++;
            }
        }
        return meter.lufs() + ROOM_DECIBELS;
    }

    @Override
    public void close() throws IOException {
        rendering.close();
    }
}
