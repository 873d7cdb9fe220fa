package monochord.sound;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.Map;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Control;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.spi.MixerProvider;

/**
 * A sound card for tests: what is played on it is recorded. It is there only while the system property {@value
 * #PROPERTY} says {@code free}, {@code slow}, {@code busy}, {@code broken}, {@code gone} or {@code short} for one that
 * fails in the middle, or {@code held} for one that is heard once it is told to go on; else no test sees it.
 */
public final class CaptureMixerProvider extends MixerProvider {
    static final String PROPERTY = "monochord.test.card";
    static final AudioFormat FORMAT = new AudioFormat(44_100, 16, 2, true, false);

    private static final String CHOICE = "javax.sound.sampled.SourceDataLine";
    private static final Mixer.Info NAME = new Mixer.Info("Capture", "Monochord", "records what is played", "1") {};
    private static final DataLine.Info LINE =
            new DataLine.Info(SourceDataLine.class, new AudioFormat[] {FORMAT}, 0, AudioSystem.NOT_SPECIFIED);

    /** Plugs the card in, before any real one. */
    public static void plugIn(String state) {
        System.setProperty(PROPERTY, state);
        System.setProperty(CHOICE, CaptureMixerProvider.class.getName() + "#Capture");
    }

    public static void pullOut() {
        System.clearProperty(PROPERTY);
        System.clearProperty(CHOICE);
    }

    @Override
    public Mixer.Info[] getMixerInfo() {
        return System.getProperty(PROPERTY) == null ? new Mixer.Info[0] : new Mixer.Info[] {NAME};
    }

    @Override
    public Mixer getMixer(Mixer.Info info) {
        if (info != NAME || System.getProperty(PROPERTY) == null) {
            throw new IllegalArgumentException("no such mixer: " + info);
        }
        return answering(Mixer.class, new Card());
    }

    /** The parts of a mixer that are asked for; public so that the proxy may call them. */
    public static final class Card {
        public Mixer.Info getMixerInfo() {
            return NAME;
        }

        public Line.Info[] getSourceLineInfo() {
            return new Line.Info[] {LINE};
        }

        public Line.Info[] getTargetLineInfo() {
            return new Line.Info[0];
        }

        public boolean isLineSupported(Line.Info info) {
            return info.matches(LINE) || LINE.matches(info);
        }

        public Line getLine(Line.Info info) {
            return answering(SourceDataLine.class, new CaptureLine(LINE, System.getProperty(PROPERTY)));
        }

        public int getMaxLines(Line.Info info) {
            return AudioSystem.NOT_SPECIFIED;
        }

        public Control[] getControls() {
            return new Control[0];
        }
    }

    /**
     * An object of a large interface that answers by the methods of a small one, and by nothing, zero or no elsewhere.
     */
    private static <T> T answering(Class<T> wanted, Object parts) {
        Map<Class<?>, Object> nothing = Map.of(boolean.class, false, int.class, 0, long.class, 0L, float.class, 0f);
        return wanted.cast(Proxy.newProxyInstance(
                CaptureMixerProvider.class.getClassLoader(), new Class<?>[] {wanted}, (self, method, given) -> {
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
