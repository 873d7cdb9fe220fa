package monochord.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import javax.sound.midi.Sequence;

/**
 * A recording on its way into a file. Rendered once, a little at a time, so that an hour needs no more memory than a
 * minute; then its end is faded in place.
 *
 * <p>Source: Multimedia Programming Interface and Data Specifications 1.0, IBM and Microsoft, 1991, WAVE with format
 * tag 1; from memory.
 */
final class Wave implements AutoCloseable {
    private static final int RATE = JavaSound.RATE;
    private static final int FRAME_BYTES = JavaSound.FRAME_BYTES;
    private static final int HEADER_BYTES = 44;
    private static final int MOST_FRAMES = (Integer.MAX_VALUE - HEADER_BYTES) / FRAME_BYTES;
    private static final int CHUNK_BYTES = 1 << 16;
    private static final int LONGEST_TAIL = 2 * RATE;
    private static final int FADE = RATE / 5;

    private final FileChannel file;
    private final ByteBuffer chunk = ByteBuffer.allocate(CHUNK_BYTES).order(ByteOrder.LITTLE_ENDIAN);
    private long frames;
    private long lastAudible;

    private Wave(FileChannel file) {
        this.file = file;
    }

    static void record(Sequence sequence, Optional<Bank> bank, Path part) throws IOException {
        try (Rendering sound = Rendering.of(sequence, bank);
                Wave wave = new Wave(open(part))) {
            wave.copy(sound);
            wave.end(JavaSound.frames(sequence));
        }
    }

    private static FileChannel open(Path part) throws IOException {
        return FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
    }

    private void copy(Rendering sound) throws IOException {
        file.position(HEADER_BYTES);
        for (int read = sound.read(chunk.array()); read > 0; read = sound.read(chunk.array())) {
            chunk.clear().limit(read);
            measure();
            writeFully(chunk.rewind(), HEADER_BYTES + frames * FRAME_BYTES);
            frames += read / FRAME_BYTES;
        }
    }

    private void measure() {
        for (int i = 0; i < chunk.limit(); i += 2) {
            if (Math.abs(chunk.getShort(i)) > JavaSound.SILENCE) {
                lastAudible = frames + i / FRAME_BYTES;
            }
        }
    }

    /** @param music frames until the score is over, rests included */
    private void end(long music) throws IOException {
        long wanted = Math.max(music, Math.min(lastAudible + 1, music + LONGEST_TAIL));
        frames = Math.min(frames, wanted);
        if (frames > MOST_FRAMES) {
            throw new IOException("longer than a WAV file can hold, about three hours");
        }
        file.truncate(HEADER_BYTES + frames * FRAME_BYTES);
        fade(frames - Math.min(FADE, Math.max(0, frames - music)));
        writeFully(header(), 0);
    }

    /** Turns what comes from there on down ever more, to nothing. */
    private void fade(long fadeFrom) throws IOException {
        long from = fadeFrom;
        while (from < frames) {
            int count = (int) Math.min(CHUNK_BYTES / FRAME_BYTES, frames - from);
            chunk.clear().limit(count * FRAME_BYTES);
            readFully(HEADER_BYTES + from * FRAME_BYTES);
            for (int i = 0; i < chunk.limit(); i += 2) {
                chunk.putShort(i, (short) Math.round(chunk.getShort(i) * fade(from + i / FRAME_BYTES, fadeFrom)));
            }
            writeFully(chunk.rewind(), HEADER_BYTES + from * FRAME_BYTES);
            from += count;
        }
    }

    private double fade(long frame, long fadeFrom) {
        return (double) (frames - 1 - frame) / (frames - fadeFrom);
    }

    private void readFully(long position) throws IOException {
        while (chunk.hasRemaining()) {
            if (file.read(chunk, position + chunk.position()) < 0) {
                throw new IOException("the recording got shorter while it was being written");
            }
        }
    }

    private void writeFully(ByteBuffer bytes, long position) throws IOException {
        while (bytes.hasRemaining()) {
            file.write(bytes, position + bytes.position());
        }
    }

    private ByteBuffer header() {
        int soundBytes = Math.toIntExact(frames * FRAME_BYTES);
        ByteBuffer header = ByteBuffer.allocate(HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
        header.put(name("RIFF")).putInt(HEADER_BYTES - 8 + soundBytes).put(name("WAVE"));
        header.put(name("fmt ")).putInt(16).putShort((short) 1).putShort((short) 2);
        header.putInt(RATE)
                .putInt(RATE * FRAME_BYTES)
                .putShort((short) FRAME_BYTES)
                .putShort((short) 16);
        return header.put(name("data")).putInt(soundBytes).flip();
    }

    private static byte[] name(String fourLetters) {
        return fourLetters.getBytes(StandardCharsets.US_ASCII);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
