package monochord.sound;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import javax.sound.midi.Soundbank;

/**
 * The bank that comes with the program: a few instruments, and for each other sound of General MIDI the nearest of them.
 *
 * <p>Cut by {@code src/bank/cut}; whose recordings they are and under which licence stands beside the file.
 */
public final class OwnBank {
    private static final String FILE = "/monochord/sounds.sf2";

    private static final int PIANO = 1;
    private static final int ELECTRIC_PIANO = 5;
    private static final int VIBRAPHONE = 12;
    private static final int ORGAN = 17;
    private static final int GUITAR = 25;
    private static final int BASS = 33;
    private static final int STRINGS = 49;
    private static final int CHOIR = 53;
    private static final int BRASS = 62;
    private static final int CLARINET = 72;
    private static final int FLUTE = 74;

    /** For each of the sixteen families of eight, who plays them: nearest in how a note begins and lasts; our choice. */
    private static final List<List<Integer>> FAMILIES = List.of(
            List.of(PIANO, PIANO, PIANO, PIANO, ELECTRIC_PIANO, ELECTRIC_PIANO, GUITAR, ELECTRIC_PIANO),
            List.of(VIBRAPHONE, VIBRAPHONE, VIBRAPHONE, VIBRAPHONE, VIBRAPHONE, VIBRAPHONE, VIBRAPHONE, GUITAR),
            List.of(ORGAN, ORGAN, ORGAN, ORGAN, ORGAN, ORGAN, ORGAN, ORGAN),
            List.of(GUITAR, GUITAR, GUITAR, GUITAR, GUITAR, GUITAR, GUITAR, GUITAR),
            List.of(BASS, BASS, BASS, BASS, BASS, BASS, BASS, BASS),
            List.of(STRINGS, STRINGS, STRINGS, STRINGS, STRINGS, GUITAR, GUITAR, BASS),
            List.of(STRINGS, STRINGS, STRINGS, STRINGS, CHOIR, CHOIR, CHOIR, BRASS),
            List.of(BRASS, BRASS, BRASS, BRASS, BRASS, BRASS, BRASS, BRASS),
            List.of(CLARINET, CLARINET, CLARINET, CLARINET, CLARINET, CLARINET, CLARINET, CLARINET),
            List.of(FLUTE, FLUTE, FLUTE, FLUTE, FLUTE, FLUTE, FLUTE, FLUTE),
            List.of(CLARINET, BRASS, FLUTE, FLUTE, GUITAR, CHOIR, BRASS, BRASS),
            List.of(STRINGS, STRINGS, STRINGS, CHOIR, STRINGS, VIBRAPHONE, CHOIR, STRINGS),
            List.of(VIBRAPHONE, STRINGS, VIBRAPHONE, GUITAR, ELECTRIC_PIANO, CHOIR, STRINGS, STRINGS),
            List.of(GUITAR, GUITAR, GUITAR, GUITAR, VIBRAPHONE, CLARINET, STRINGS, CLARINET),
            List.of(VIBRAPHONE, VIBRAPHONE, VIBRAPHONE, VIBRAPHONE, BASS, BASS, BASS, VIBRAPHONE),
            List.of(GUITAR, FLUTE, STRINGS, FLUTE, VIBRAPHONE, ORGAN, STRINGS, BASS));

    private OwnBank() {}

    /** Read when it is first asked for. */
    private static final class Loaded {
        private static final Soundbank SOUNDS = load();

        private static Soundbank load() {
            try (InputStream file = OwnBank.class.getResourceAsStream(FILE)) {
                return Bank.parse(new BufferedInputStream(file));
            } catch (IOException broken) {
                throw new IllegalStateException("the program's own sounds cannot be read", broken);
            }
        }
    }

    static Soundbank sounds() {
        return Loaded.SOUNDS;
    }

    /** The patch of ours that plays this one: itself, or the nearest. */
    static Patch nearest(Patch patch) {
        int program = patch.number() - 1;
        return new Patch(FAMILIES.get(program / 8).get(program % 8));
    }

    /** Who plays this patch: itself where the bank that is named has it, or ours; else the nearest of ours. */
    public static Patch player(Patch patch, Optional<Bank> bank) {
        return bank.filter(named -> named.has(patch)).isPresent() ? patch : nearest(patch);
    }
}
