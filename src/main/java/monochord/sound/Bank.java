package monochord.sound;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.sound.midi.Instrument;
import javax.sound.midi.Soundbank;
import monochord.score.Score;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * A sound bank from a file: a SoundFont (SF2) or Downloadable Sounds (DLS).
 *
 * <p>Sources: SoundFont Technical Specification 2.04, 2006 (RIFF form {@code sfbk}); Downloadable Sounds Level 1, MIDI
 * Manufacturers Association, 1997 (RIFF form {@code DLS }); from memory.
 *
 */
public final class Bank {
    private static final long LARGEST_MEGABYTES = 1024;
    private static final long MEGABYTE = 1 << 20;
    private static final int MAGIC = 12;
    private static final String PARSERS = "com.sun.media.sound.";
    private static final String SOUND_FONT = "SF2Soundbank";

    private final Path file;
    private Soundbank sounds;

    private Bank(Path file) {
        this.file = file;
    }

    /** One that was read and tried at another time; it is read again when something of it is to sound. */
    public static Bank known(Path file) {
        return new Bank(file);
    }

    /**
     * Reads a bank and tries it with a chord. Nothing in the file can make this take long or end the program.
     *
     * @throws IOException with the message {@code path: what is wrong}
     */
    public static Bank read(Path file) throws IOException {
        try {
            Bank bank = new Bank(file);
            bank.load();
            bank.tryOut();
            return bank;
        } catch (NoSuchFileException missing) {
            throw new Failure(file.toString(), Phrase.of("there is no such file"), missing);
        } catch (IOException wrong) {
            throw new Failure(file.toString(), Failure.told(wrong), wrong);
        }
    }

    private static String parser(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new Failure(Phrase.of("is a folder, not a file"));
        }
        long size = Files.size(file);
        if (!Files.isRegularFile(file)) {
            throw new Failure(Phrase.of("is no file that could hold a sound bank"));
        }
        if (size > LARGEST_MEGABYTES * MEGABYTE) {
            throw new Failure(
                    Phrase.of("has {0} MB; at most {1} are read", (int) (size / MEGABYTE), (int) LARGEST_MEGABYTES));
        }
        return parser(first(file), size);
    }

    private static byte[] first(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(MAGIC);
        }
    }

    /** RIFF, the length of the rest, and the form. */
    private static String parser(byte[] first, long size) throws IOException {
        String text = new String(first, StandardCharsets.ISO_8859_1);
        boolean soundFont = text.endsWith("sfbk");
        if (first.length < MAGIC || !text.startsWith("RIFF") || !soundFont && !text.endsWith("DLS ")) {
            throw new Failure(Phrase.of("is neither a SoundFont nor a DLS bank"));
        }
        long said = Integer.toUnsignedLong(
                ByteBuffer.wrap(first).order(ByteOrder.LITTLE_ENDIAN).getInt(4));
        if (said + 8 > size) {
            throw new Failure(
                    Phrase.of("is cut off: it should have {0} bytes and has {1}", figures(said + 8), figures(size)));
        }
        return soundFont ? SOUND_FONT : "DLSSoundbank";
    }

    private static Phrase figures(long bytes) {
        return Phrase.typed(Long.toString(bytes));
    }

    private void load() throws IOException {
        String parser = parser(file);
        sounds = GuardedInput.once(() -> parse(parser, File.class, file.toFile()));
        if (sounds.getInstruments().length == 0) {
            throw new Failure(Phrase.of("holds no instrument"));
        }
    }

    /** What the JDK makes of a SoundFont. */
    static Soundbank parse(InputStream soundFont) throws IOException {
        return parse(SOUND_FONT, InputStream.class, soundFont);
    }

    private static <T> Soundbank parse(String parser, Class<T> kind, T bank) throws IOException {
        try {
            return (Soundbank)
                    Class.forName(PARSERS + parser).getConstructor(kind).newInstance(bank);
        } catch (InvocationTargetException broken) {
            throw new Failure(Phrase.of("is broken"), broken.getCause());
        } catch (ReflectiveOperationException hidden) {
            throw new Failure(Phrase.of("cannot be read, for this Java keeps its banks closed"), hidden);
        }
    }

    /** Plays a chord on its first instrument to nobody. */
    private void tryOut() throws IOException {
        int program = Arrays.stream(sounds.getInstruments())
                .map(Instrument::getPatch)
                .filter(patch -> patch.getBank() == 0)
                .mapToInt(javax.sound.midi.Patch::getProgram)
                .filter(number -> number >= 0 && number < Patch.all().size())
                .min()
                .orElseThrow(() -> new Failure(Phrase.of("holds no instrument of General MIDI's first bank")));
        Score chord = Score.together(Arrays.asList(Pitch.parse("C3"), Pitch.parse("E4"), Pitch.parse("C6")), Beats.ONE);
        Performance trial = Performance.of(chord).with(new Patch(program + 1)).from(Optional.of(this));
        try (Rendering rendering = Rendering.of(trial.sequence(), trial.bank())) {
            rendering.read(new float[2 * JavaSound.RATE]);
        } catch (RuntimeException | LinkageError broken) {
            throw new Failure(Phrase.of("is broken"), broken);
        }
    }

    /**
     * What the JDK made of it.
     *
     * @throws IOException if it cannot be read, or no longer
     */
    synchronized Soundbank sounds() throws IOException {
        if (sounds == null) {
            load();
        }
        return sounds;
    }

    public Path file() {
        return file;
    }

    /** Whether it plays this sound itself; one that can no longer be read plays none. */
    boolean has(Patch patch) {
        try {
            return Arrays.stream(sounds().getInstruments())
                    .map(Instrument::getPatch)
                    .anyMatch(had -> had.getBank() == 0 && had.getProgram() == patch.number() - 1);
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** The name of its file. */
    public String name() {
        return String.valueOf(file.getFileName());
    }
}
