package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.theory.Interval;
import monochord.theory.Unreadable;

/** Judges the name of an interval: {@code m3}, {@code minor third}, {@code min 3rd}. */
public final class IntervalRubric extends Rubric<Interval> {
    private static final Map<String, String> ORDINALS = Map.of(
            "1", "unison", "2", "second", "3", "third", "4", "fourth", "5", "fifth", "6", "sixth", "7", "seventh", "8",
            "octave");

    private static final Pattern ENDING = Pattern.compile("(?<=[0-9])(?:st|nd|rd|th)$");
    private static final List<Word> WORDS = List.of(
            word("mi(?:n(?:or)?)?", "minor "),
            word("ma(?:j(?:or)?)?", "major "),
            word("per(?:f(?:ect)?)?", "perfect "),
            word("aug(?:mented)?", "augmented "),
            word("dim(?:inished)?", "diminished "));

    private record Word(Pattern written, String meant) {}

    private final String way;

    /** @param way a sentence that points the way and stops short of the name */
    public IntervalRubric(Interval wanted, String way, Supplier<List<Slip<Interval>>> slips) {
        super(wanted, slips);
        this.way = way;
    }

    /** A quality in front of a figure; before a word it has to be whole. */
    private static Word word(String written, String meant) {
        return new Word(Pattern.compile("^" + written + "[. ]*(?=[0-9])"), meant);
    }

    @Override
    Interval read(String text) {
        String example = example("minor third", "P5");
        String plain = AnswerText.plain(text, "an interval", example);
        String bare = plain.replaceAll("(?i)^an? +", "").strip();
        if (bare.equalsIgnoreCase("tritone")) {
            throw Unreadable.because(
                    text, 0, "one interval", "it may be an augmented fourth or a diminished fifth", example);
        }
        return Interval.parse(bare.matches("[dmPMAp]+[0-9]+") ? bare : inWords(bare))
                .size();
    }

    /** {@code min 3rd} as {@code minor third}, {@code octave} as a perfect one. */
    private static String inWords(String bare) {
        String words = ENDING.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll("");
        for (Word word : WORDS) {
            words = word.written.matcher(words).replaceFirst(word.meant);
        }
        String last = words.substring(words.lastIndexOf(' ') + 1);
        String named = ORDINALS.containsKey(last)
                ? words.substring(0, words.length() - last.length()) + ORDINALS.get(last)
                : words;
        return named.equals("octave") || named.equals("unison") ? "perfect " + named : named;
    }

    @Override
    String write(Interval answer) {
        return answer.toString();
    }

    @Override
    boolean same(Interval one, Interval other) {
        return one.equals(other);
    }

    @Override
    Verdict accept(Interval given) {
        return verdict(Grade.RIGHT, "Yes, " + Say.interval(given) + ": " + Say.halfSteps(given.semitones()) + ".");
    }

    @Override
    boolean soundsRight(Interval given) {
        return given.semitones() == wanted().semitones();
    }

    @Override
    Grade grade(Interval given) {
        return given.number() == wanted().number() ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(Interval given) {
        if (soundsRight(given)) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    "It sounds like that, and the letters say otherwise. " + way);
        } else if (given.number() == wanted().number()) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.WRONG_QUALITY,
                    "The number is right. " + Say.interval(given).replaceFirst("^a", "A") + " would be "
                            + Say.halfSteps(given.semitones()) + "; here there are " + Say.count(wanted().semitones())
                            + ".");
        }
        return verdict(Grade.WRONG, Misconception.WRONG_DEGREE, way);
    }
}
