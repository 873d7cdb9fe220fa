package monochord.sound.file;

import de.sciss.jump3r.lowlevel.LameEncoder;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import monochord.sound.Performance;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * A performance as a small recording: MPEG-1 Audio Layer III (ISO/IEC 13818-3), joint stereo, 64 kbit/s. Two channels, for what is measured
 * and heard at -18 LUFS as stereo would be 3 LU softer as one.
 */
public final class Mp3 {
    /** Its media type. */
    public static final String TYPE = "audio/mpeg";

    private static final int KILOBITS = 64;

    private Mp3() {}

    /** How many bytes a recording of so many seconds has at least. */
    public static long bytes(long seconds) {
        return seconds * KILOBITS * 1000 / Byte.SIZE;
    }

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
            throw new Failure(Phrase.of("the recording cannot be read again"), ours);
        }
    }

    private static byte[] encoded(AudioInputStream stereo) throws IOException {
        LameEncoder encoder = new LameEncoder(
                stereo.getFormat(), KILOBITS, LameEncoder.CHANNEL_MODE_JOINT_STEREO, LameEncoder.QUALITY_MIDDLE, false);
        try {
            ByteArrayOutputStream small = new ByteArrayOutputStream();
            byte[] out = new byte[encoder.getMP3BufferSize()];
            int room = encoder.getPCMBufferSize();
            byte[] piece = stereo.readNBytes(room);
            for (; piece.length > 0; piece = stereo.readNBytes(room)) {
                small.write(out, 0, encoder.encodeBuffer(piece, 0, piece.length, out));
            }
            small.write(out, 0, encoder.encodeFinish(out));
            return small.toByteArray();
        } finally {
            encoder.close();
        }
    }
}
