package monochord.harmony.voicing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.voicing.cost.Comfort;
import monochord.harmony.voicing.cost.Texture;
import monochord.harmony.voicing.cost.ToneChoice;
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
    CLOSE(4, 6, ToneChoice.WHOLE),
    /** The bass and a tone a fifth or more above it in the left hand; what colours the chord in the right. */
    SPREAD(4, 7, ToneChoice.WHOLE),
    /** Root in the left hand, third and seventh in the right. */
    SHELL(3, 4, ToneChoice.SHELL),
    /** Four voices in the ranges of a choir. Source: Integrated Music Theory, lesson 10a. */
    CHOIR(4, 4, ToneChoice.SPARE),
    /** Nobody else plays: the bass and a tone well above it in the left hand, three notes of the chord in the right. */
    ALONE(5, 6, ToneChoice.WHOLE),
    /** Somebody else has the bass: third and seventh, fifth and ninth about middle C, without the root. */
    WITH_BASS(4, 6, ToneChoice.ROOTLESS),
    /** The left hand holds the root with the third or the seventh, the right what is missing, and the tune on top. */
    UNDER_TUNE(3, 5, ToneChoice.SHELL),
    /** A close chord of four tones whose second from the top goes down an octave. */
    DROP_TWO(4, 4, ToneChoice.FOUR);

    private final int voices;
    private final int most;
    private final ToneChoice choice;

    VoicingStyle(int voices, int most, ToneChoice choice) {
        this.voices = voices;
        this.most = most;
        this.choice = choice;
    }

    /** The style of that name: {@code with bass}, in any case. */
    public static Optional<VoicingStyle> find(String words) {
        return Arrays.stream(values())
                .filter(style -> style.toString().equalsIgnoreCase(words))
                .findFirst();
    }

    /** Voices in a chord that needs no more. */
    public int voices() {
        return voices;
    }

    /** The most voices that the style has room for. */
    public int most() {
        return most;
    }

    ToneChoice choice() {
        return choice;
    }

    /** What the formula has to know of this style with so many voices. */
    Texture texture(int count) {
        VoicingWeights weights = switch (this) {
            case CLOSE, SHELL -> VoicingWeights.HANDS;
            case SPREAD, ALONE, UNDER_TUNE -> VoicingWeights.OPEN_HANDS;
            case WITH_BASS, DROP_TWO -> VoicingWeights.ABOVE_A_BASS;
            case CHOIR -> VoicingWeights.VOICES;
        };
        Comfort comfort = switch (this) {
            case CLOSE, SHELL, SPREAD, ALONE -> Comfort.HANDS;
            case UNDER_TUNE -> Comfort.UNDER_A_TUNE;
            case WITH_BASS, DROP_TWO -> Comfort.ABOVE_A_BASS;
            case CHOIR -> Comfort.CHOIR;
        };
        return new Texture(weights, comfort, this == CHOIR ? 0 : leftHand(count), choice.hasBass());
    }

    /** How many of so many voices the left hand plays; in a choir, where it may differ, two. */
    int leftHand(int count) {
        return switch (this) {
            case CLOSE -> count > 5 ? 2 : 1;
            case SHELL -> 1;
            case CHOIR, ALONE, UNDER_TUNE, DROP_TWO -> 2;
            case SPREAD -> count == 6 ? 3 : 2;
            case WITH_BASS -> count / 2;
        };
    }

    /** {@code spread}, {@code with a bass player}, as a reader has it. */
    public Phrase inWords() {
        return switch (this) {
            case CLOSE -> Phrase.of("close");
            case SPREAD -> Phrase.of("spread");
            case SHELL -> Phrase.of("shell");
            case CHOIR -> Phrase.of("choir");
            case ALONE -> Phrase.of("alone");
            case WITH_BASS -> Phrase.of("with a bass player");
            case UNDER_TUNE -> Phrase.of("under a tune");
            case DROP_TWO -> Phrase.of("drop two");
        };
    }

    /** {@code spread voicing}, {@code voicing with a bass player}. */
    Phrase voicing() {
        return switch (this) {
            case CLOSE, SPREAD, SHELL, CHOIR, DROP_TWO -> Phrase.of("{0} voicing", inWords());
            case ALONE, WITH_BASS, UNDER_TUNE -> Phrase.of("voicing {0}", inWords());
        };
    }

    /** What a musician types to have it. */
    Phrase asked() {
        return this == DROP_TWO ? Phrase.verb("drop 2") : Phrase.verb(toString());
    }

    /** In small letters: {@code with bass}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
