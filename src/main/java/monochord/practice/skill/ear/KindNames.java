package monochord.practice.skill.ear;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.practice.reading.AnswerReading;
import monochord.practice.reading.ChordReading;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.Unreadable;

/** The kinds of chord that are asked by ear: their names in words, and what they feel like. */
final class KindNames {
    static final ChordKind SUS4 = ChordKind.parse("sus4");
    static final ChordKind SUS2 = ChordKind.parse("sus2");

    private record Named(ChordKind kind, String words, Phrase said, Phrase feel) {}

    private static final List<Named> ALL = List.of(
            new Named(ChordKind.MAJOR, "major", Phrase.of("major"), Phrase.of("bright and at rest")),
            new Named(ChordKind.MINOR, "minor", Phrase.of("minor"), Phrase.of("dark and at rest")),
            new Named(
                    SUS4,
                    "sus4",
                    Phrase.of("sus4"),
                    Phrase.of("neither bright nor dark, and waits for its fourth to fall")),
            new Named(ChordKind.DIMINISHED, "diminished", Phrase.of("diminished"), Phrase.of("dark and pinched")),
            new Named(
                    ChordKind.AUGMENTED,
                    "augmented",
                    Phrase.of("augmented"),
                    Phrase.of("bright and stretched, with no home")),
            new Named(SUS2, "sus2", Phrase.of("sus2"), Phrase.of("neither bright nor dark, and wide open")),
            new Named(
                    ChordKind.DOMINANT_SEVENTH,
                    "dominant seventh",
                    Phrase.of("a dominant seventh"),
                    Phrase.of("bright with an edge, and wants to move on")),
            new Named(
                    ChordKind.MAJOR_SEVENTH,
                    "major seventh",
                    Phrase.of("a major seventh"),
                    Phrase.of("bright, with a soft rub at the top")),
            new Named(
                    ChordKind.MINOR_SEVENTH,
                    "minor seventh",
                    Phrase.of("a minor seventh"),
                    Phrase.of("dark and mellow")),
            new Named(
                    ChordKind.HALF_DIMINISHED,
                    "half-diminished seventh",
                    Phrase.of("a half-diminished seventh"),
                    Phrase.of("dark, pinched and soft at once")),
            new Named(
                    ChordKind.DIMINISHED_SEVENTH,
                    "diminished seventh",
                    Phrase.of("a diminished seventh"),
                    Phrase.of("pinched all through, in equal steps")));

    private static final Map<String, String> OTHER_WORDS = Map.ofEntries(
            Map.entry("dominant", "7"),
            Map.entry("dominant 7", "7"),
            Map.entry("dominant 7th", "7"),
            Map.entry("dominant seven", "7"),
            Map.entry("dom7", "7"),
            Map.entry("seventh", "7"),
            Map.entry("half diminished", "m7b5"),
            Map.entry("half diminished 7", "m7b5"),
            Map.entry("diminished 7", "dim7"),
            Map.entry("major 7", "maj7"),
            Map.entry("minor 7", "m7"),
            Map.entry("suspended", "sus4"),
            Map.entry("suspended fourth", "sus4"),
            Map.entry("suspended second", "sus2"),
            Map.entry("sus", "sus4"),
            Map.entry("min", "m"),
            Map.entry("º", "dim"));

    private static final Pattern DECORATION =
            Pattern.compile("(?i)^an? +(?=[a-z0-9]{2})|[ -]*(?:chord|triad|one)\\.?$|\\.$");
    private static final String WHAT = "a quality";

    /** No symbol of a kind is longer. */
    private static final int LONGEST = 12;

    private KindNames() {}

    static List<ChordKind> kinds() {
        return ALL.stream().map(Named::kind).toList();
    }

    private static Optional<Named> of(ChordKind kind) {
        return ALL.stream().filter(named -> named.kind.equals(kind)).findFirst();
    }

    /** {@code dominant seventh}, or the symbol's own writing for a kind that is not asked. */
    static String write(ChordKind kind) {
        return of(kind).map(Named::words).orElseGet(kind::toString);
    }

    /** The same for a sentence: {@code minor}, {@code a dominant seventh}. */
    static Phrase say(ChordKind kind) {
        return of(kind).map(Named::said).orElseGet(() -> Phrase.of("{0}", kind));
    }

    /** Behind "is", if there is a word for it. */
    static Optional<Phrase> feel(ChordKind kind) {
        return of(kind).map(Named::feel);
    }

    /**
     * Reads a quality in words or signs, or the symbol of a chord, whose root may be any.
     *
     * @throws Unreadable if it is neither
     */
    static Chord read(String text, Chord sounding, String example) {
        return AnswerReading.read(text, WHAT, example, plain -> readPlain(plain, sounding, example));
    }

    private static Chord readPlain(String plain, Chord sounding, String example) {
        String bare = DECORATION.matcher(plain.strip()).replaceAll("").strip();
        return kind(bare)
                .map(kind -> new Chord(sounding.root(), kind))
                .or(() -> symbol(bare))
                .orElseThrow(() -> Unreadable.because(plain, 0, WHAT, "a word or a sign for it is enough", example));
    }

    /** The kind that words or signs say, if they say one. */
    static Optional<ChordKind> kind(String bare) {
        String words = bare.toLowerCase(Locale.ROOT)
                .replace('-', ' ')
                .replaceAll(" +", " ")
                .strip();
        Optional<ChordKind> named = ALL.stream()
                .filter(one -> one.words.replace('-', ' ').equals(words))
                .map(Named::kind)
                .findFirst();
        return named.or(() -> suffix(OTHER_WORDS.getOrDefault(words, bare.replace(" ", ""))));
    }

    private static Optional<ChordKind> suffix(String sign) {
        try {
            boolean some = !sign.isEmpty() && sign.length() <= LONGEST;
            return some ? Optional.of(ChordKind.parse(sign)) : Optional.empty();
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }

    private static Optional<Chord> symbol(String bare) {
        try {
            return Optional.of(ChordReading.symbol(bare));
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }
}
