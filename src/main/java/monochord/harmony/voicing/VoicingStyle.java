package monochord.harmony.voicing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.voicing.cost.VoicingWeights;
import monochord.text.Phrase;

/**
 * How a progression is laid out for two hands.
 *
 * <p>Each style has a number of voices that stays the same from chord to chord, so that each voice can be followed; where
 * a chord has more tones that must be heard, every chord gets as many voices as that one needs, and where small hands
 * cannot reach so many, every chord gets fewer. Common practice, no source, but for the two that name theirs.
 */
public enum VoicingStyle {
    /**
     * The bass alone in the left hand, three notes in the right within an octave. Source: Open Music Theory (2014),
     * "bassoContinuo", on keyboard style.
     */
    CLOSE(4),
    /** Root and fifth in the left hand, or root and tenth within reach; what colours the chord in the right. */
    SPREAD(4),
    /** Root in the left hand, third and seventh in the right. */
    SHELL(3),
    /** Four voices in the ranges of a choir. Source: Integrated Music Theory, lesson 10a. */
    CHOIR(4);

    private final int voices;

    VoicingStyle(int voices) {
        this.voices = voices;
    }

    public static Optional<VoicingStyle> find(String word) {
        return Arrays.stream(values())
                .filter(style -> style.toString().equalsIgnoreCase(word))
                .findFirst();
    }

    /** Voices in a chord that needs no more. */
    public int voices() {
        return voices;
    }

    VoicingWeights weights() {
        return switch (this) {
            case CLOSE, SHELL -> VoicingWeights.HANDS;
            case SPREAD -> VoicingWeights.SPREAD_HANDS;
            case CHOIR -> VoicingWeights.VOICES;
        };
    }

    /** {@code spread}, as a reader has it. */
    public Phrase inWords() {
        return switch (this) {
            case CLOSE -> Phrase.of("close");
            case SPREAD -> Phrase.of("spread");
            case SHELL -> Phrase.of("shell");
            case CHOIR -> Phrase.of("choir");
        };
    }

    /** In small letters: {@code spread}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
