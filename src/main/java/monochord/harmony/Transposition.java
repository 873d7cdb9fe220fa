package monochord.harmony;

import java.util.stream.IntStream;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/**
 * Where a progression goes when it is moved: into another key, onto the paper of a transposing instrument, or into the
 * shapes a guitarist plays above a capo.
 */
public final class Transposition {
    /** The highest fret a capo is put on here. */
    public static final int HIGHEST_FRET = 11;

    private static final int SAME_KEY_OF_THE_KEYBOARD = 12;

    private Transposition() {}

    /** The key an instrument reads when {@code key} sounds, respelled where it would need more than seven accidentals. */
    public static Key written(Key key, Instrument instrument) {
        return inUse(new Key(key.tonic().plus(instrument.writtenAbove()), key.mode()));
    }

    /**
     * The key an instrument's part is written in: of those that sound alike the one with the fewest signs, flats before
     * sharps where both have six. Common practice, no source.
     */
    public static Key part(Key key, Instrument instrument) {
        Key there = new Key(key.tonic().plus(instrument.writtenAbove()), key.mode());
        return simplest(there, there.tonic().pitchClass());
    }

    /** The same key, or the one that sounds alike and has the fewer accidentals if this has more than seven. */
    public static Key inUse(Key key) {
        return key.isInUse() ? key : simplest(key, key.tonic().pitchClass());
    }

    /**
     * The key whose shapes a guitarist plays with a capo so that {@code sounding} sounds: so many half steps below it.
     *
     * @param fret from 0 to {@value #HIGHEST_FRET}
     * @throws IllegalArgumentException if the fret is not in that range
     */
    public static Key shapes(Key sounding, int fret) {
        if (fret < 0 || fret > HIGHEST_FRET) {
            throw new IllegalArgumentException("fret must be from 0 to " + HIGHEST_FRET + ", not " + fret);
        }
        return fret == 0 ? sounding : simplest(sounding, sounding.tonic().pitchClass() - fret);
    }

    /** The fret on which the shapes of one key sound as another, from 0 to {@value #HIGHEST_FRET}. */
    public static int fret(Key sounding, Key shapes) {
        return Math.floorMod(sounding.tonic().pitchClass() - shapes.tonic().pitchClass(), SAME_KEY_OF_THE_KEYBOARD);
    }

    /** Of the spellings of one tonic, the key with the fewest accidentals, flats before sharps where both have six. */
    private static Key simplest(Key like, int pitchClass) {
        return IntStream.rangeClosed(-13, 17)
                .mapToObj(NoteName::at)
                .filter(name -> name.pitchClass() == Math.floorMod(pitchClass, SAME_KEY_OF_THE_KEYBOARD))
                .map(name -> new Key(name, like.mode()))
                .reduce((best, key) -> Math.abs(key.signature()) < Math.abs(best.signature()) ? key : best)
                .orElseThrow();
    }
}
