package monochord.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.spi.MixerProvider;

/**
 * A sound card for a machine without one: it takes sound no faster than it would be heard, and notes in the file that
 * the system property {@value #FILE} names when the first of it that is no silence would leave the loudspeaker.
 */
public final class NotingCard extends MixerProvider {
    static final String FILE = "monochord.bench.heard";

    private static final AudioFormat FORMAT = new AudioFormat(44_100, 16, 2, true, false);
    private static final int BYTES_PER_SECOND = 176_400;
    private static final int SILENCE = 8;
    private static final Mixer.Info NAME = new Mixer.Info("Noting", "Monochord", "notes the first sound", "1") {};
    private static final DataLine.Info LINE =
            new DataLine.Info(SourceDataLine.class, new AudioFormat[] {FORMAT}, 0, AudioSystem.NOT_SPECIFIED);

    @Override
    public Mixer.Info[] getMixerInfo() {
        return System.getProperty(FILE) == null ? new Mixer.Info[0] : new Mixer.Info[] {NAME};
    }

    @Override
    public Mixer getMixer(Mixer.Info info) {
        if (info != NAME) {
            throw new IllegalArgumentException("no such mixer: " + info);
        }
        return answering(Mixer.class, new Card());
    }

    /** The parts of a mixer that are asked for. */
    public static final class Card {
        public Mixer.Info getMixerInfo() {
            return NAME;
        }

        public Line.Info[] getSourceLineInfo() {
            return new Line.Info[] {LINE};
        }

        public boolean isLineSupported(Line.Info info) {
            return info.matches(LINE) || LINE.matches(info);
        }

        public Line getLine(Line.Info info) {
            return answering(SourceDataLine.class, new Output());
        }
    }

    /** The parts of a line that are asked for. */
    public static final class Output {
        private long begun;
        private long written;
        private int buffer;
        private boolean noted;

        public void open(AudioFormat format, int bytes) {
            buffer = bytes;
        }

        public AudioFormat getFormat() {
            return FORMAT;
        }

        public void start() {
            begun = System.nanoTime();
        }

        public int write(byte[] sound, int from, int length) {
            for (int i = from; !noted && i < from + length; i += 2) {
                noted = Math.abs(sound[i + 1] << 8 | sound[i] & 0xFF) > SILENCE;
                if (noted) {
                    note(written + i - from);
                }
            }
            written += length;
            double ahead = (double) (written - buffer) / BYTES_PER_SECOND - (System.nanoTime() - begun) / 1e9;
            LockSupport.parkNanos((long) (Math.max(0, ahead) * 1e9));
            return length;
        }

        /** Never before it was given, and never before all that was given earlier has been heard. */
        private void note(long place) {
            long waits = Math.max(0, place * 1_000_000 / BYTES_PER_SECOND - (System.nanoTime() - begun) / 1000);
            long micros = ChronoUnit.MICROS.between(Instant.EPOCH, Instant.now()) + waits;
            try {
                Files.writeString(Path.of(System.getProperty(FILE)), micros + "\n");
            } catch (IOException unwritten) {
                throw new UncheckedIOException(unwritten);
            }
        }

        public long getLongFramePosition() {
            return Math.min(written / 4, (System.nanoTime() - begun) * (BYTES_PER_SECOND / 4) / 1_000_000_000L);
        }
    }

    /** An object of a large interface that answers by the methods of a small one, and by nothing elsewhere. */
    private static <T> T answering(Class<T> wanted, Object parts) {
        Map<Class<?>, Object> nothing = Map.of(boolean.class, false, int.class, 0, long.class, 0L, float.class, 0f);
        return wanted.cast(Proxy.newProxyInstance(
                NotingCard.class.getClassLoader(), new Class<?>[] {wanted}, (self, method, given) -> {
                    try {
                        return parts.getClass()
                                .getMethod(method.getName(), method.getParameterTypes())
                                .invoke(parts, given);
                    } catch (NoSuchMethodException unasked) {
                        return nothing.get(method.getReturnType());
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                }));
    }
}
