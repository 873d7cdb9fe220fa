package monochord.practice.reading;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/** Reads the name of an interval: {@code m3}, {@code minor third}, {@code min 3rd}. */
public final class IntervalReading {
    private static final Map<String, String> ORDINALS = Map.of(
            "1", "unison", "2", "second", "3", "third", "4", "fourth", "5", "fifth", "6", "sixth", "7", "seventh", "8",
            "octave");

    private static final Map<String, Interval> STEPS = Map.of(
            "half step",
            Interval.MINOR_SECOND,
            "semitone",
            Interval.MINOR_SECOND,
            "whole step",
            Interval.MAJOR_SECOND,
            "whole tone",
            Interval.MAJOR_SECOND);

    private static final Pattern ENDING = Pattern.compile("(?<=[0-9])(?:st|nd|rd|th)$");
    private static final List<SpokenWord> WORDS = List.of(
            word("mi(?:n(?:or)?)?", "minor "),
            word("ma(?:j(?:or)?)?", "major "),
            word("per(?:f(?:ect)?)?", "perfect "),
            word("aug(?:mented)?", "augmented "),
            word("dim(?:inished)?", "diminished "));

    private static final Pattern ARTICLE = Pattern.compile("(?i)^\\s*(?:an?|one|eine?|une?|una) +");
    private static final Pattern ALTERED = Pattern.compile("([b♭#♯+-])([1-9])(?:th|rd|nd)?");
    private static final Pattern HALF_STEPS = Pattern.compile("(?i)[0-9a-z]+ (?:half[ -]?steps?|semitones?)");
    private static final Pattern QUALITY = Pattern.compile("(?i)(?:perfect|major|minor|augmented|diminished)");
    private static final Pattern LETTER = Pattern.compile("[dmPMAp]+[0-9]+");
    /** As German books abbreviate them. */
    private static final Pattern GERMAN = Pattern.compile("^([kgrvü])(?:[lr]|ein|erm|bm)?[. ]*([0-9]+)");
    /** {@code sixth minor}: the quality behind the number, as Romance languages have it. */
    private static final Pattern QUALITY_LAST = Pattern.compile(
            "(unison|second|third|fourth|fifth|sixth|seventh|octave),? (?:an? )?(minor|major|perfect|augmented|diminished)");

    private static final Pattern SIZED =
            Pattern.compile("^(?:(small|little)|(big|large|great)) (?=second|third|sixth|seventh|[2367])");
    private static final Pattern ONE = Pattern.compile("(?i)(?<=[a-z0-9]) one$");

    private IntervalReading() {}

    /**
     * The text without decoration and article.
     *
     * @throws Unreadable if nothing is written, or too much
     */
    public static String bare(String text, String example) {
        return withoutArticle(AnswerText.plain(text, "an interval", example));
    }

    /** The text without the article before it. */
    public static String withoutArticle(String plain) {
        return ARTICLE.matcher(plain).replaceFirst("").strip();
    }

    /** Whether the text names the interval that has two spellings. */
    public static boolean isTritone(String plain) {
        return withoutArticle(plain).equalsIgnoreCase("tritone");
    }

    /**
     * The interval, going up.
     *
     * @throws Unreadable if the text is none
     */
    public static Interval read(String plain) {
        String bare = withoutArticle(plain);
        Matcher altered = ALTERED.matcher(bare);
        if (altered.matches()) {
            return altered(altered.group(1), Integer.parseInt(altered.group(2)));
        }
        if (HALF_STEPS.matcher(bare).matches()) {
            throw Unreadable.because(
                    bare, 0, "an interval", "that is its size in half steps; give its name", "minor third");
        }
        if (QUALITY.matcher(bare).matches()) {
            throw Unreadable.because(bare, 0, "an interval", "say its number too", "minor third");
        }
        String words = LETTER.matcher(bare).matches() ? bare : inWords(bare);
        if (STEPS.containsKey(words)) {
            return STEPS.get(words);
        }
        if (ORDINALS.containsValue(words)) {
            Clause why = Clause.of(
                    words.matches("fourth|fifth")
                            ? "say which {0}: perfect, augmented or diminished"
                            : "say which {0}: major, minor, augmented or diminished",
                    words);
            throw Unreadable.because(bare, 0, "one interval", why, "minor third");
        }
        return Interval.parse(words).size();
    }

    /** {@code b6} is a minor sixth, {@code b5} a diminished fifth, {@code +5} an augmented one. */
    private static Interval altered(String sign, int number) {
        Interval altered =
                Degree.of((number - 1) % 7 + 1, "b♭-".contains(sign) ? -1 : 1).interval();
        return number > 7 ? altered.plus(Interval.OCTAVE) : altered;
    }

    /** A quality in front of a figure; before a word it has to be whole. */
    private static SpokenWord word(String written, String meant) {
        return new SpokenWord(Pattern.compile("^" + written + "[. ]*(?=[0-9])"), meant);
    }

    private static String german(String letter) {
        return switch (letter) {
            case "k" -> "minor ";
            case "g" -> "major ";
            case "r" -> "perfect ";
            case "v" -> "diminished ";
            default -> "augmented ";
        };
    }

    /** {@code min 3rd} as {@code minor third}, {@code octave} as a perfect one. */
    private static String inWords(String bare) {
        String lower = ONE.matcher(bare.toLowerCase(Locale.ROOT)).replaceFirst("");
        String words = ENDING.matcher(lower).replaceAll("");
        words = SIZED.matcher(words).replaceFirst(found -> found.group(1) != null ? "minor " : "major ");
        words = QUALITY_LAST.matcher(words).replaceFirst("$2 $1");
        words = GERMAN.matcher(words).replaceFirst(found -> german(found.group(1)) + found.group(2));
        words = SpokenWord.replace(WORDS, words);
        String last = words.substring(words.lastIndexOf(' ') + 1);
        String named = ORDINALS.containsKey(last)
                ? words.substring(0, words.length() - last.length()) + ORDINALS.get(last)
                : words;
        return named.equals("octave") || named.equals("unison") ? "perfect " + named : named;
    }
}
