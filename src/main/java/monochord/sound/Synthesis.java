package monochord.sound;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Sequence;
import javax.sound.midi.Soundbank;
import javax.sound.midi.Synthesizer;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;

/**
 * The JDK's synthesizer played without a card, a little at a time, so that an hour needs no more memory than a minute.
 *
 * <p>The method that does so is public, but in a package that the JDK shows only to programs whose manifest says {@code
 * Add-Exports: java.desktop/com.sun.media.sound}; so it is called by name.
 */
final class Synthesis extends InputStream {
    private static final String AUDIO_SYNTHESIZER = "com.sun.media.sound.AudioSynthesizer";

    private final Synthesizer synthesizer;
    private final AudioInputStream sound;
    private final Events events;
    private long bytes;

    private Synthesis(Synthesizer synthesizer, AudioInputStream sound, Events events) {
        this.synthesizer = synthesizer;
        this.sound = sound;
        this.events = events;
    }

    /**
     * @return nothing if this Java does not show its synthesizer
     * @throws IOException if it has none, or it does not start
     */
    static Optional<InputStream> of(Sequence sequence, Optional<Soundbank> bank) throws IOException {
        try {
            Synthesizer synthesizer = MidiSystem.getSynthesizer();
            AudioInputStream sound = open(synthesizer);
            Set<Integer> programs = Events.programs(sequence);
            bank.ifPresent(sounds -> load(sounds, programs, synthesizer));
            return Optional.of(new Synthesis(synthesizer, sound, new Events(sequence, synthesizer.getReceiver())));
        } catch (MidiUnavailableException none) {
            throw new IOException("this Java has no synthesizer", none);
        } catch (InvocationTargetException failed) {
            throw new IOException("the synthesizer does not start", failed.getCause());
        } catch (ReflectiveOperationException | IllegalArgumentException hidden) {
            return Optional.empty();
        }
    }

    private static AudioInputStream open(Synthesizer synthesizer) throws ReflectiveOperationException {
        Method open = Class.forName(AUDIO_SYNTHESIZER).getMethod("openStream", AudioFormat.class, Map.class);
        return (AudioInputStream) open.invoke(synthesizer, JavaSound.FORMAT, null);
    }

    /** What the bank has of these; what it has not, still comes from the JDK's own. */
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
        events.sendUntil((bytes + length) / JavaSound.FRAME_BYTES);
        int read = sound.read(piece, from, length);
        bytes += Math.max(0, read);
        return read;
    }

    @Override
    public void close() {
        synthesizer.close();
    }
}
