package monochord.sound;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Sequence;
import javax.sound.midi.Soundbank;
import javax.sound.midi.Synthesizer;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * The JDK's synthesizer played without a card, a little at a time, so that an hour needs no more memory than a minute:
 * stereo, floats, the lower byte first. It is told all its settings and gets all its sounds from us, so that neither the
 * user's preferences nor a bank in the user's home or on the machine is heard.
 *
 * <p>The method that does so is public, but in a package that the JDK shows only to programs whose manifest says {@code
 * Add-Exports: java.desktop/com.sun.media.sound}; so it is called by name.
 */
final class Synthesis extends InputStream {
    private static final String AUDIO_SYNTHESIZER = "com.sun.media.sound.AudioSynthesizer";
    /** How often a second it looks at envelopes and keys: its own measure. */
    private static final float CONTROL_RATE = 147;

    private static final int FRAME_BYTES = 2 * Float.BYTES;

    /**
     * The synthesizer looks up user preferences, and those log lines to the terminal when the home is new or read-only.
     */
    private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

    static {
        PREFERENCES.setLevel(Level.OFF);
    }

    private final Synthesizer synthesizer;
    private final AudioInputStream sound;
    private final MidiEvents events;
    private final int rate;
    private long bytes;

    /** How well it is done. */
    enum Quality {
        HEARD(JavaSound.RATE, true),
        /** To measure how loud it is, and nothing else: a quarter of the frames, and no room. */
        MEASURED(JavaSound.RATE / 4, false);

        private final int rate;
        private final boolean room;

        Quality(int rate, boolean room) {
            this.rate = rate;
            this.room = room;
        }

        /** Frames a second. */
        int rate() {
            return rate;
        }

        private AudioFormat format() {
            return new AudioFormat(AudioFormat.Encoding.PCM_FLOAT, rate, Float.SIZE, 2, FRAME_BYTES, rate, false);
        }

        /** All of the synthesizer's settings; what it would hold back is left to the limiter. */
        private Map<String, Object> settings() {
            Map<String, Object> settings = new HashMap<>();
            settings.put("interpolation", "linear");
            settings.put("control rate", CONTROL_RATE);
            settings.put("max polyphony", 64);
            settings.put("midi channels", 16);
            settings.put("reverb", room);
            settings.put("light reverb", true);
            settings.put("chorus", false);
            settings.put("auto gain control", false);
            settings.put("large mode", false);
            settings.put("load default soundbank", false);
            return settings;
        }
    }

    private Synthesis(Synthesizer synthesizer, AudioInputStream sound, MidiEvents events, int rate) {
        this.synthesizer = synthesizer;
        this.sound = sound;
        this.events = events;
        this.rate = rate;
    }

    /**
     * @param bank whose sounds are taken before ours
     * @throws IOException if this Java has no synthesizer, or does not show it, or it does not start
     */
    static InputStream of(Sequence sequence, Optional<Bank> bank, Quality quality) throws IOException {
        try {
            Synthesizer synthesizer = MidiSystem.getSynthesizer();
            AudioInputStream sound = open(synthesizer, quality);
            IntUnaryOperator playing =
                    program -> OwnBank.player(new Patch(program + 1), bank).number() - 1;
            Set<Integer> programs = MidiEvents.programs(sequence).stream()
                    .map(playing::applyAsInt)
                    .collect(Collectors.toSet());
            load(OwnBank.sounds(), programs, synthesizer);
            if (bank.isPresent()) {
                load(bank.get().sounds(), programs, synthesizer);
            }
            MidiEvents events = new MidiEvents(sequence, synthesizer.getReceiver(), playing);
            return new Synthesis(synthesizer, sound, events, quality.rate());
        } catch (MidiUnavailableException none) {
            throw new Failure(Phrase.of("this Java has no synthesizer"), none);
        } catch (InvocationTargetException failed) {
            throw new Failure(Phrase.of("the synthesizer does not start"), failed.getCause());
        } catch (ReflectiveOperationException | IllegalArgumentException hidden) {
            throw new Failure(
                    Phrase.of("this Java keeps its synthesizer closed; start it by the program's own launcher"),
                    hidden);
        }
    }

    private static AudioInputStream open(Synthesizer synthesizer, Quality quality) throws ReflectiveOperationException {
        Method open = Class.forName(AUDIO_SYNTHESIZER).getMethod("openStream", AudioFormat.class, Map.class);
        return (AudioInputStream) open.invoke(synthesizer, quality.format(), quality.settings());
    }

    /** What the bank has of these, and its percussion; a bank that comes later takes the place of one before. */
    private static void load(Soundbank bank, Set<Integer> programs, Synthesizer synthesizer) {
        Arrays.stream(bank.getInstruments())
                .filter(instrument -> instrument.getPatch().getBank() == 0)
                .filter(instrument -> programs.contains(instrument.getPatch().getProgram()))
                .forEach(synthesizer::loadInstrument);
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    /** Everything that begins while this piece sounds is told to the synthesizer before it is asked for the piece. */
    @Override
    public int read(byte[] piece, int from, int length) throws IOException {
        events.sendUntil((double) (bytes + length) / FRAME_BYTES / rate);
        int read = sound.read(piece, from, length);
        bytes += Math.max(0, read);
        return read;
    }

    @Override
    public void close() {
        synthesizer.close();
    }
}
