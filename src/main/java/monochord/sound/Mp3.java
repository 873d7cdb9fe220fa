package monochord.sound;

import de.sciss.jump3r.lowlevel.LameEncoder;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/** A performance as a small recording: MPEG-1 Audio Layer III (ISO/IEC 11172-3), one channel, 64 kbit/s. */
public final class Mp3 {
    /** Its media type. */
    public static final String TYPE = "audio/mpeg";

    private static final int KILOBITS = 64;
    private static final AudioFormat MONO = new AudioFormat(JavaSound.RATE, 16, 1, true, false);

    private Mp3() {}

    /**
     * What {@link WavFile} would write, made small.
     *
     * @throws IOException if this Java has no synthesizer, or there is no room for the recording on its way
     */
    public static byte[] of(Performance performance) throws IOException {
        Path folder = Files.createTempDirectory("monochord");
        Path recording = folder.resolve("recording.wav");
        try {
            WavFile.write(performance, recording);
            return encoded(recording);
        } finally {
            Files.deleteIfExists(recording);
            Files.deleteIfExists(folder);
        }
    }

    private static byte[] encoded(Path recording) throws IOException {
        try (InputStream file = new BufferedInputStream(Files.newInputStream(recording));
                AudioInputStream sound = AudioSystem.getAudioInputStream(file)) {
            return encoded(sound);
        } catch (UnsupportedAudioFileException ours) {
            throw new IOException("the recording cannot be read again", ours);
        }
    }

    private static byte[] encoded(AudioInputStream stereo) throws IOException {
        LameEncoder encoder =
                new LameEncoder(MONO, KILOBITS, LameEncoder.CHANNEL_MODE_MONO, LameEncoder.QUALITY_MIDDLE, false);
        try {
            ByteArrayOutputStream small = new ByteArrayOutputStream();
            byte[] out = new byte[encoder.getMP3BufferSize()];
            int room = encoder.getPCMBufferSize();
            byte[] piece = stereo.readNBytes(2 * room);
            for (; piece.length > 0; piece = stereo.readNBytes(2 * room)) {
                byte[] mono = mixed(piece);
                small.write(out, 0, encoder.encodeBuffer(mono, 0, mono.length, out));
            }
            small.write(out, 0, encoder.encodeFinish(out));
            return small.toByteArray();
        } finally {
            encoder.close();
        }
    }

    /** Both channels as one, each at half its size. */
    private static byte[] mixed(byte[] stereo) {
        byte[] mono = new byte[stereo.length / 2];
        for (int frame = 0; frame < mono.length / 2; frame++) {
            int both = (sample(stereo, 4 * frame) + sample(stereo, 4 * frame + 2)) / 2;
            mono[2 * frame] = (byte) both;
            mono[2 * frame + 1] = (byte) (both >> 8);
        }
        return mono;
    }

    private static int sample(byte[] sound, int place) {
        return sound[place + 1] << 8 | sound[place] & 0xFF;
    }
}
