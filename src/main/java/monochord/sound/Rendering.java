package monochord.sound;

import static monochord.sound.JavaSound.FRAME_BYTES;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;
import javax.sound.midi.Sequence;

/**
 * A sequence on its way to become sound, a little at a time, softened wherever it would be too loud. It goes on for four
 * seconds after the music.
 */
final class Rendering implements AutoCloseable {
    private static final int TAIL_SECONDS = 4;

    private final InputStream sound;
    private final Limiter limiter = new Limiter();
    private final long end;
    private long given;

    private Rendering(InputStream sound, long frames) throws IOException {
        this.sound = sound;
        this.end = frames;
        pass(new byte[Limiter.AHEAD * FRAME_BYTES], Limiter.AHEAD * FRAME_BYTES);
    }

    /**
     * @throws IOException if this Java has no synthesizer, or the bank cannot be played
     */
    static Rendering of(Sequence sequence, Optional<Bank> bank) throws IOException {
        long frames = JavaSound.frames(sequence) + (long) TAIL_SECONDS * JavaSound.RATE;
        return new Rendering(JavaSound.render(sequence, bank), frames);
    }

    /**
     * The next piece of sound.
     *
     * @param piece filled from its beginning
     * @return how many bytes, whole frames; 0 at the end
     * @throws IOException if the bank cannot be played
     */
    int read(byte[] piece) throws IOException {
        int frames = (int) Math.min(piece.length / FRAME_BYTES, end - given);
        int bytes = pass(piece, frames * FRAME_BYTES);
        given += bytes / FRAME_BYTES;
        return bytes;
    }

    /** Through the limiter; past the end of what the synthesizer gives there is silence. */
    private int pass(byte[] piece, int bytes) throws IOException {
        int read = sound.readNBytes(piece, 0, bytes);
        Arrays.fill(piece, read, bytes, (byte) 0);
        for (int i = 0; i < bytes; i += FRAME_BYTES) {
            int frame = limiter.next(sample(piece, i), sample(piece, i + 2));
            for (int b = 0; b < FRAME_BYTES; b++) {
                piece[i + b] = (byte) (frame >> 8 * b);
            }
        }
        return bytes;
    }

    private static short sample(byte[] piece, int at) {
        return (short) (piece[at + 1] << 8 | piece[at] & 0xFF);
    }

    @Override
    public void close() throws IOException {
        sound.close();
    }
}
