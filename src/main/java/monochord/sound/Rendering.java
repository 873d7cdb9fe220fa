package monochord.sound;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;
import javax.sound.midi.Sequence;

/**
 * A sequence on its way to become sound, a little at a time, as loud as the synthesizer makes it. It goes on for four
 * seconds after the music. Samples are floats of which 1 is full scale, and may be more.
 */
public final class Rendering implements AutoCloseable {
    private static final int TAIL_SECONDS = 4;
    /** Both channels. */
    private static final int FRAME_SAMPLES = 2;

    private final InputStream sound;
    private final long end;
    private long given;
    private ByteBuffer bytes = ByteBuffer.allocate(0);

    private Rendering(InputStream sound, long frames) {
        this.sound = sound;
        this.end = frames;
    }

    /** @throws IOException if this Java has no synthesizer, or the bank cannot be played */
    public static Rendering of(Sequence sequence, Optional<Bank> bank) throws IOException {
        return of(sequence, bank, Synthesis.Quality.HEARD);
    }

    public static Rendering of(Sequence sequence, Optional<Bank> bank, Synthesis.Quality quality) throws IOException {
        long frames = sequence.getMicrosecondLength() * quality.rate() / 1_000_000;
        InputStream sound = Synthesis.of(sequence, bank, quality);
        return new Rendering(
                bank.isPresent() ? new GuardedInput(sound) : sound, frames + (long) TAIL_SECONDS * quality.rate());
    }

    /**
     * The next piece of sound; past the end of what the synthesizer gives there is silence.
     *
     * @param piece filled from its beginning, left and right in turn
     * @return how many samples, of whole frames; 0 at the end
     * @throws IOException if the bank cannot be played
     */
    public int read(float[] piece) throws IOException {
        int samples = (int) Math.min(piece.length, (end - given) * FRAME_SAMPLES);
        if (bytes.capacity() < samples * Float.BYTES) {
            bytes = ByteBuffer.allocate(samples * Float.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        }
        int read = sound.readNBytes(bytes.array(), 0, samples * Float.BYTES) / Float.BYTES;
        bytes.clear();
        bytes.asFloatBuffer().get(piece, 0, read);
        Arrays.fill(piece, read, samples, 0);
        given += samples / FRAME_SAMPLES;
        return samples;
    }

    @Override
    public void close() throws IOException {
        sound.close();
    }
}
