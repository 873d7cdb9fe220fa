package monochord.sound.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import javax.sound.midi.Sequence;
import monochord.sound.Bank;
import monochord.sound.JavaSound;
import monochord.sound.Levelled;
import monochord.sound.Rendering;
import monochord.sound.level.LoudnessMeter;
import monochord.sound.level.LoudnessTarget;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * A recording on its way into a file, a little at a time, so that an hour needs no more memory than a minute. First it is
 * rendered into the file as it comes, in floats, and its loudness measured; then it is brought to its level in place, and
 * its end faded.
 *
 * <p>Source: Multimedia Programming Interface and Data Specifications 1.0, IBM and Microsoft, 1991, WAVE with format
 * tag 1; from memory.
 */
final class Wave implements AutoCloseable {
    private static final int RATE = JavaSound.RATE;
    private static final int FRAME_BYTES = JavaSound.FRAME_BYTES;
    private static final int HEADER_BYTES = 44;
    private static final int MOST_FRAMES = (Integer.MAX_VALUE - HEADER_BYTES) / FRAME_BYTES;
    /** Frames dealt with at a time. */
    private static final int CHUNK = 1 << 13;

    private static final int RAW_BYTES = 2 * Float.BYTES;
    private static final double SILENCE = JavaSound.SILENCE / 32_768.0;
    private static final int LONGEST_TAIL = 2 * RATE;
    private static final int FADE = RATE / 5;

    private final FileChannel file;
    private final float[] samples = new float[2 * CHUNK];
    private final ByteBuffer raw = ByteBuffer.allocate(CHUNK * RAW_BYTES).order(ByteOrder.LITTLE_ENDIAN);
    private final ByteBuffer finished = ByteBuffer.allocate(CHUNK * FRAME_BYTES).order(ByteOrder.LITTLE_ENDIAN);
    private final LoudnessMeter meter = new LoudnessMeter(RATE);
    /** The highest sample of each chunk. */
    private float[] peaks = new float[1 << 10];

    private int chunks;
    private long rendered;
    private long frames;

    private Wave(FileChannel file) {
        this.file = file;
    }

    static void record(Sequence sequence, Optional<Bank> bank, Path part) throws IOException {
        try (Rendering sound = Rendering.of(sequence, bank);
                Wave wave = new Wave(open(part))) {
            wave.render(sound);
            wave.finish(JavaSound.frames(sequence));
        }
    }

    private static FileChannel open(Path part) throws IOException {
        return FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
    }

    private void render(Rendering sound) throws IOException {
        for (int read = sound.read(samples); read > 0; read = sound.read(samples)) {
            measure(read);
            raw.clear();
            raw.asFloatBuffer().put(samples, 0, read);
            raw.limit(read * Float.BYTES);
            writeFully(raw, HEADER_BYTES + rendered * RAW_BYTES);
            rendered += read / 2;
        }
    }

    private void measure(int read) {
        float peak = 0;
        for (int i = 0; i < read; i += 2) {
            meter.add(samples[i], samples[i + 1]);
            peak = Math.max(peak, Math.max(Math.abs(samples[i]), Math.abs(samples[i + 1])));
        }
        if (chunks == peaks.length) {
            peaks = Arrays.copyOf(peaks, 2 * chunks);
        }
        peaks[chunks++] = peak;
    }

    /** @param music frames until the score is over, rests included */
    private void finish(long music) throws IOException {
        double gain = LoudnessTarget.gain(meter.lufs());
        long wanted = Math.max(music, Math.min(audible(gain), music + LONGEST_TAIL));
        frames = Math.min(rendered, wanted);
        if (frames > MOST_FRAMES) {
            throw new Failure(Phrase.of("longer than a WAV file can hold, about three hours"));
        }
        level(new Levelled(gain), frames - Math.min(FADE, Math.max(0, frames - music)));
        file.truncate(HEADER_BYTES + frames * FRAME_BYTES);
        writeFully(header(), 0);
    }

    /** Frames until all is silence. */
    private long audible(double gain) {
        int last = chunks;
        while (last > 0 && peaks[last - 1] * gain <= SILENCE) {
            last--;
        }
        return (long) last * CHUNK;
    }

    /** What is written is half as long as what was read, and never overtakes it. */
    private void level(Levelled levelled, long fadeFrom) throws IOException {
        long written = 0;
        for (long read = 0; written < frames; read += CHUNK) {
            readRaw(read);
            int bytes = levelled.pass(samples, samples.length, finished.array());
            int count = (int) Math.min(bytes / FRAME_BYTES, frames - written);
            fade(written, count, fadeFrom);
            writeFully(finished.clear().limit(count * FRAME_BYTES), HEADER_BYTES + written * FRAME_BYTES);
            written += count;
        }
    }

    /** A chunk of what was rendered; behind its end there is silence. */
    private void readRaw(long frame) throws IOException {
        int count = (int) Math.max(0, Math.min(CHUNK, rendered - frame));
        raw.clear().limit(count * RAW_BYTES);
        while (raw.hasRemaining()) {
            if (file.read(raw, HEADER_BYTES + frame * RAW_BYTES + raw.position()) < 0) {
                throw new Failure(Phrase.of("the recording got shorter while it was being written"));
            }
        }
        raw.flip().asFloatBuffer().get(samples, 0, 2 * count);
        Arrays.fill(samples, 2 * count, samples.length, 0);
    }

    /** Turns what comes from there on down ever more, to nothing. */
    private void fade(long first, int count, long fadeFrom) {
        for (long frame = Math.max(first, fadeFrom); frame < first + count; frame++) {
            double share = (double) (frames - 1 - frame) / (frames - fadeFrom);
            int at = (int) (frame - first) * FRAME_BYTES;
            finished.putShort(at, (short) Math.round(finished.getShort(at) * share));
            finished.putShort(at + 2, (short) Math.round(finished.getShort(at + 2) * share));
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
