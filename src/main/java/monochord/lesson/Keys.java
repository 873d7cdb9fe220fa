package monochord.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Which keys a block asks in, in steps from easy to awkward.
 *
 * <p>Text form: keys with commas between them and {@code , then} between steps, such as {@code same, then E, A, then
 * flats}. A key is a name ({@code Bb}, {@code G#m}, {@code E minor}) or a word: {@code same} is the learner's key, {@code
 * easy sharps flats all} are sets of major keys. {@link #parse} reads all that {@link #toString} writes.
 */
public record Keys(List<List<KeyChoice>> steps) {
    private static final String SAME = "same";
    private static final String EXAMPLE = "easy, then E, A, then flats";
    private static final Map<String, List<Key>> SETS = Map.of(
            "easy", named("C G F D Bb"),
            "sharps", named("G D A E B F# C#"),
            "flats", named("F Bb Eb Ab Db Gb Cb"),
            "all", Key.majorKeys());
    private static final Pattern THEN = Pattern.compile(",?\\sthen\\s");
    private static final Pattern COMMA = Pattern.compile(",");

    /**
     * A key or a word that stands for keys.
     *
     * @param keys none if the choice is the learner's own
     */
    public record KeyChoice(String written, List<Key> keys) {
        public KeyChoice {
            keys = List.copyOf(keys);
        }

        List<Key> in(Key lessonKey) {
            return keys.isEmpty() ? List.of(lessonKey) : keys;
        }
    }

    /** @throws IllegalArgumentException if there is no step, or no choice in one */
    public Keys {
        steps = steps.stream().map(List::copyOf).toList();
        if (steps.isEmpty() || steps.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("keys must have a step, and each step a key, not " + steps);
        }
    }

    /** The learner's key alone. */
    public static Keys same() {
        return new Keys(List.of(List.of(new KeyChoice(SAME, List.of()))));
    }

    /** @throws Unreadable if a key or word is none, or no chart is written in the key */
    public static Keys parse(String text) {
        List<List<KeyChoice>> steps = new ArrayList<>();
        for (PlacedText step : new PlacedText(text, 0).split(THEN)) {
            steps.add(
                    step.split(COMMA).stream().map(piece -> choice(piece, text)).toList());
        }
        return new Keys(steps);
    }

    private static KeyChoice choice(PlacedText piece, String line) {
        String word = piece.text();
        if (word.equals(SAME) || SETS.containsKey(word)) {
            return new KeyChoice(word, SETS.getOrDefault(word, List.of()));
        }
        Key key = key(piece, line);
        if (key.mode() != Mode.IONIAN && key.mode() != Mode.AEOLIAN || !key.isInUse()) {
            throw refused(
                    piece, line, Clause.of("a key to ask in must be major or minor and have at most seven signs"));
        }
        return new KeyChoice(key.tonic() + (key.isMinor() ? "m" : ""), List.of(key));
    }

    private static Key key(PlacedText piece, String line) {
        try {
            return Key.parse(piece.text());
        } catch (Unreadable otherwise) {
            throw refused(piece, line, Clause.of("expected a key, or same, easy, sharps, flats or all"));
        }
    }

    private static Unreadable refused(PlacedText piece, String line, Clause why) {
        return Unreadable.because(piece.text(), 0, "a key", why, EXAMPLE).within(line, piece.place());
    }

    private static List<Key> named(String tonics) {
        return Pattern.compile(" ")
                .splitAsStream(tonics)
                .map(tonic -> Key.major(NoteName.parse(tonic)))
                .toList();
    }

    /** The keys of each step, for a learner in that key. */
    public List<List<Key>> in(Key lessonKey) {
        return steps.stream()
                .map(step -> step.stream()
                        .flatMap(choice -> choice.in(lessonKey).stream())
                        .distinct()
                        .toList())
                .toList();
    }

    @Override
    public String toString() {
        return steps.stream()
                .map(step -> step.stream().map(KeyChoice::written).collect(Collectors.joining(", ")))
                .collect(Collectors.joining(", then "));
    }
}
