package monochord.harmony.motion;

import monochord.text.Phrase;

/** What a teacher calls a voice: the four of a choir by their parts, others by their place between bass and top. */
final class VoiceNames {
    private static final int CHOIR = 4;

    private final Strictness strictness;

    VoiceNames(Strictness strictness) {
        this.strictness = strictness;
    }

    /**
     * {@code tenor}, {@code second voice}.
     *
     * @param voice from 0 at the bottom, of {@code voices} in all
     */
    Phrase of(int voice, int voices) {
        Phrase brief = brief(voice, voices);
        return isOfChoir(voices) || isBass(voice, voices) ? brief : Phrase.of("{0} voice", brief);
    }

    /** The same without the word voice, for lists. */
    Phrase brief(int voice, int voices) {
        if (isOfChoir(voices)) {
            return part(voice);
        } else if (isBass(voice, voices)) {
            return Phrase.of("bass");
        } else if (voice == 0) {
            return Phrase.of("lower");
        } else if (voice == voices - 1) {
            return voices == 2 ? Phrase.of("upper") : Phrase.of("top");
        }
        return voices == 3 ? Phrase.of("middle") : inner(voice);
    }

    private boolean isOfChoir(int voices) {
        return strictness == Strictness.CHORALE && voices == CHOIR;
    }

    private static boolean isBass(int voice, int voices) {
        return voice == 0 && voices != 2;
    }

    private static Phrase part(int voice) {
        return switch (voice) {
            case 0 -> Phrase.of("bass");
            case 1 -> Phrase.of("tenor");
            case 2 -> Phrase.of("alto");
            default -> Phrase.of("soprano");
        };
    }

    /** @param voice from 1, next to the bass; a passage has at most {@value Passage#MOST_VOICES} voices */
    private static Phrase inner(int voice) {
        return switch (voice) {
            case 1 -> Phrase.of("second");
            case 2 -> Phrase.of("third");
            case 3 -> Phrase.of("fourth");
            case 4 -> Phrase.of("fifth");
            case 5 -> Phrase.of("sixth");
            case 6 -> Phrase.of("seventh");
            case 7 -> Phrase.of("eighth");
            case 8 -> Phrase.of("ninth");
            default -> Phrase.of("tenth");
        };
    }
}
