package monochord.harmony.motion;

import java.util.List;

/** What a teacher calls a voice: the four of a choir by their parts, others by their place between bass and top. */
final class VoiceNames {
    private static final List<String> CHOIR = List.of("bass", "tenor", "alto", "soprano");
    private static final List<String> PLACES =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");
    private static final List<String> COUNTS =
            List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

    private final Strictness strictness;

    VoiceNames(Strictness strictness) {
        this.strictness = strictness;
    }

    /** @param voice from 0 at the bottom, of {@code voices} in all */
    String of(int voice, int voices) {
        String brief = brief(voice, voices);
        return brief.equals("bass") || CHOIR.contains(brief) ? brief : brief + " voice";
    }

    /** The same without the word voice, for lists. */
    String brief(int voice, int voices) {
        if (strictness == Strictness.CHORALE && voices == CHOIR.size()) {
            return CHOIR.get(voice);
        } else if (voice == 0) {
            return voices == 2 ? "lower" : "bass";
        } else if (voice == voices - 1) {
            return voices == 2 ? "upper" : "top";
        }
        return voices == 3 ? "middle" : PLACES.get(voice);
    }

    static String count(int voices) {
        return COUNTS.get(voices);
    }
}
