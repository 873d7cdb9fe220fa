package monochord.practice.reading;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import monochord.theory.note.Clause;
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
    private static final List<Word> WORDS = List.of(
            word("mi(?:n(?:or)?)?", "minor "),
            word("ma(?:j(?:or)?)?", "major "),
            word("per(?:f(?:ect)?)?", "perfect "),
            word("aug(?:mented)?", "augmented "),
            word("dim(?:inished)?", "diminished "));

    private record Word(Pattern written, String meant) {}

    private IntervalReading() {}

    /**
     * The text without decoration and article.
     *
     * @throws Unreadable if nothing is written, or too much
     */
    public static String bare(String text, String example) {
        return AnswerText.plain(text, "an interval", example)
                .replaceAll("(?i)^an? +", "")
                .strip();
    }

    /** Whether the text names the interval that has two spellings. */
    public static boolean isTritone(String bare) {
        return bare.equalsIgnoreCase("tritone");
    }

    /**
     * The interval, going up.
     *
     * @throws Unreadable if the text is none
     */
    public static Interval read(String bare) {
        String words = bare.matches("[dmPMAp]+[0-9]+") ? bare : inWords(bare);
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

    /** A quality in front of a figure; before a word it has to be whole. */
    private static Word word(String written, String meant) {
        return new Word(Pattern.compile("^" + written + "[. ]*(?=[0-9])"), meant);
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
}
