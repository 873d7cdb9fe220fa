package monochord.shell.sentence;

import java.util.List;
import java.util.stream.Stream;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;

/** The key a sentence is in, and the keys that can be completed. */
public final class SentenceKey {
    private SentenceKey() {}

    /** The key named by {@code in}, else the sitting's. */
    public static Key of(Sentence sentence, Sitting sitting) {
        return sentence.clause("in").map(part -> part.read(Key::parse)).orElseGet(sitting::key);
    }

    /** Each key in one word: {@code D}, {@code Dm}. */
    public static List<String> shortNames() {
        return Stream.concat(
                        Key.majorKeys().stream().map(key -> key.tonic().toString()),
                        Key.minorKeys().stream().map(key -> key.tonic() + "m"))
                .toList();
    }

    public static List<String> names() {
        return Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .map(Key::toString)
                .toList();
    }
}
