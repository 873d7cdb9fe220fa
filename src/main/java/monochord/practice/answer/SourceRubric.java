package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Judges the scale a borrowed chord comes from: {@code C minor}, {@code the parallel minor}, {@code mixolydian}. */
public final class SourceRubric extends Rubric<Scale> {
    private static final Pattern DECORATION = Pattern.compile("(?i)^from +| +(?:scale|mode|key)$");
    private static final String WHAT = "a scale";

    private final Chord chord;
    private final Key key;
    private final List<Scale> sources;

    /** @param sources the scales that hold the chord, nearest first; not empty */
    public SourceRubric(Chord chord, Key key, List<Scale> sources, Supplier<List<Slip<Scale>>> slips) {
        super(sources.get(0), slips);
        this.chord = chord;
        this.key = key;
        this.sources = sources;
    }

    @Override
    Scale read(String text) {
        String example = "dorian";
        String plain = DECORATION.matcher(AnswerText.plain(text, WHAT, example)).replaceAll("");
        String name = plain.toLowerCase(Locale.ROOT);
        return switch (name) {
            case "parallel minor", "parallel" ->
                new Scale(key.tonic(), key.parallel().scale().kind());
            case "parallel major" -> new Scale(key.tonic(), ScaleKind.MAJOR);
            case "relative minor", "relative major", "relative" ->
                key.relative().scale();
            default -> named(plain, name);
        };
    }

    private Scale named(String plain, String name) {
        try {
            return new Scale(key.tonic(), ScaleKind.parse(name.replaceFirst("^parallel ", "")));
        } catch (Unreadable unreadable) {
            return withTonic(plain);
        }
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
                    plain, 0, WHAT, "say minor, mixolydian or another, with its tonic or without", "dorian");
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
        return verdict(Grade.RIGHT, "Yes, " + Say.scale(given) + ": it holds " + Say.list(chord.tones()) + ".");
    }

    @Override
    Verdict acceptAlso(Scale given) {
        return verdict(
                Grade.REMARK,
                "Yes, " + Say.scale(given) + " holds it too. " + Say.scale(wanted())
                        + " is nearer: it changes fewer degrees of " + Say.key(key) + ".");
    }

    @Override
    Verdict otherwise(Scale given) {
        List<NoteName> strange =
                chord.tones().stream().filter(tone -> !given.holds(tone)).toList();
        boolean otherTonic = !given.tonic().equals(key.tonic());
        String why = otherTonic
                ? "A parallel scale stands on the same tonic, " + Say.note(key.tonic()) + "."
                : Say.scale(given) + " has no " + Say.list(strange) + ".";
        return verdict(
                Grade.WRONG,
                otherTonic ? Misconception.WRONG_KEY : Misconception.WRONG_SOURCE,
                why + " Look for the scale that holds " + Say.list(chord.tones()) + ".");
    }
}
