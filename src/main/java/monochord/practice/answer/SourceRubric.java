package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.harmony.Borrowing;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Judges the scale a borrowed chord comes from: {@code C minor}, {@code the parallel minor}, {@code mixolydian}. */
public final class SourceRubric extends Rubric<Scale> {
    private static final Pattern DECORATION = Pattern.compile("(?i)^\\s*from +| +(?:scale|mode|key|natural|one)$");

    /** {@code minor scale on Bb}. */
    private static final Pattern ON_TONIC =
            Pattern.compile("(?i)([a-z ]+?)(?: scale| mode)? (?:on|of|from) ([A-G][b#♭♯]?)");

    private static final List<String> MODES =
            List.of("ionian", "dorian", "phrygian", "lydian", "mixolydian", "aeolian", "locrian");

    private final Chord chord;
    private final Key key;
    private final List<Scale> sources;

    /** @param sources the scales that hold the chord, nearest first; not empty */
    public SourceRubric(Chord chord, Key key, List<Scale> sources, Supplier<List<ModelledError<Scale>>> errors) {
        super(sources.get(0), errors);
        this.chord = chord;
        this.key = key;
        this.sources = sources;
    }

    @Override
    String what() {
        return "a scale";
    }

    @Override
    String example() {
        return "dorian";
    }

    @Override
    Scale read(String plain) {
        String bare = DECORATION.matcher(plain).replaceAll("").strip();
        bare = ON_TONIC.matcher(bare).replaceFirst("$2 $1");
        String name = bare.toLowerCase(Locale.ROOT);
        return switch (name) {
            case "parallel minor", "parallel" ->
                new Scale(key.tonic(), key.parallel().scale().kind());
            case "parallel major" -> new Scale(key.tonic(), ScaleKind.MAJOR);
            case "relative minor", "relative major", "relative" ->
                key.relative().scale();
            default -> named(bare, name);
        };
    }

    private Scale named(String plain, String name) {
        try {
            return new Scale(key.tonic(), ScaleKind.parse(whole(name.replaceFirst("^parallel ", ""))));
        } catch (Unreadable unreadable) {
            return withTonic(plain);
        }
    }

    /** A mode by the beginning of its name, as players shorten it: {@code mixo}, {@code phryg}. */
    private static String whole(String name) {
        return MODES.stream()
                .filter(mode -> name.length() > 2 && mode.startsWith(name))
                .findFirst()
                .orElse(name);
    }

    private static Scale withTonic(String plain) {
        try {
            return Scale.parse(plain);
        } catch (Unreadable unreadable) {
            return ofKey(plain);
        }
    }

    private static Scale ofKey(String plain) {
        try {
            return Key.parse(plain).scale();
        } catch (Unreadable unreadable) {
            throw Unreadable.because(
                    plain, 0, "a scale", "say minor, mixolydian or another, with its tonic or without", "dorian");
        }
    }

    @Override
    String write(Scale answer) {
        return answer.toString();
    }

    @Override
    boolean same(Scale one, Scale other) {
        return one.equals(other);
    }

    @Override
    boolean isAlso(Scale given) {
        return sources.contains(given);
    }

    @Override
    Verdict accept(Scale given) {
        return verdict(Grade.RIGHT, Phrase.sentence("Yes, {0}: it holds {1}.", given, Phrase.list(chord.tones())));
    }

    @Override
    Verdict acceptAlso(Scale given) {
        return verdict(
                Grade.REMARK,
                Phrase.sentence(
                        "Yes, {0} holds it too. {1} is nearer: it changes fewer degrees of {2}.",
                        given, wanted(), key));
    }

    @Override
    Verdict otherwise(Scale given) {
        List<NoteName> strange =
                chord.tones().stream().filter(tone -> !given.holds(tone)).toList();
        boolean otherTonic = !given.tonic().equals(key.tonic());
        Phrase why = otherTonic
                ? Phrase.sentence("A parallel scale stands on the same tonic, {0}.", key.tonic())
                : Phrase.sentence("{0} has no {1}.", given, Phrase.list(strange));
        return verdict(
                Grade.WRONG,
                otherTonic ? Misconception.WRONG_KEY : Misconception.WRONG_SOURCE,
                why.then(Phrase.sentence("Look for the scale that holds {0}.", Phrase.list(chord.tones()))));
    }

    @Override
    List<Phrase> helpFrom(Scale given) {
        Phrase changed = Phrase.list(Borrowing.borrowed(chord, key).changed());
        Phrase narrowed = Phrase.sentence(
                "On {0} you need a scale with {1} and as few other changes as can be.", key.tonic(), changed);
        if (!given.tonic().equals(key.tonic())) {
            boolean holds = chord.tones().stream().allMatch(given::holds);
            return List.of(
                    holds
                            ? Phrase.sentence(
                                    "Its notes hold the chord, that is right. Now begin them on {0}.", key.tonic())
                            : Phrase.sentence("A parallel scale begins on {0}, like the key.", key.tonic()),
                    Phrase.sentence("From outside the key: {0}.", changed),
                    narrowed);
        }
        List<NoteName> held = chord.tones().stream().filter(given::holds).toList();
        return List.of(
                held.isEmpty()
                        ? Phrase.sentence("The tonic is right. Not one note of the chord is in {0}.", given)
                        : Phrase.counted(
                                held.size(),
                                "The tonic is right, and {0} is in {1}. Look at the other notes of the chord.",
                                "The tonic is right, and {0} are in {1}. Look at the other notes of the chord.",
                                Phrase.list(held),
                                given),
                Phrase.sentence("From outside the key: {0}.", changed),
                narrowed);
    }
}
