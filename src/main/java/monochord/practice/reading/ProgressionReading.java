package monochord.practice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/** Reads a row of chords, by their names or by numerals and numbers. */
public final class ProgressionReading {
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;|→]+(?:[-–—>/]+[\\s,;|→]+)*|[–—]|->");
    private static final Pattern HYPHEN = Pattern.compile("-(?=[^-]*[A-Ga-g1-7IViv])");
    private static final Pattern WORDED_FLAT = Pattern.compile("(?i)(?<![a-z])flat[ -]*(?=[1-7])");
    private static final Pattern WORDED_MINOR = Pattern.compile("(?i)(?<=[1-7A-Ga-g#b♭♯]) +minor(?![a-z])");
    private static final Pattern WORDED_MAJOR = Pattern.compile("(?i)(?<=[1-7A-Ga-g#b♭♯]) +major(?![a-z])");
    private static final List<Pattern> NUMBER_WORDS =
            List.of("zero", "one", "two", "three", "four", "five", "six", "seven").stream()
                    .map(word -> Pattern.compile("(?i)(?<![a-z])" + word + "(?![a-z])"))
                    .toList();
    private static final Pattern AND = Pattern.compile("(?i)(?<![a-z])(?:and|then|chords?)(?![a-z])");
    /** Numbers or plain chords written together; two figures alone are a number with a seventh or a sixth. */
    private static final Pattern TOGETHER =
            Pattern.compile("[1-7]{3,}|[A-G](?:[b#♭♯](?![1-9]))?(?:[A-G][b#♭♯]?(?:m|dim)?|m(?![ai]))+");

    private static final Pattern ONE_OF_MANY = Pattern.compile("[1-7]|[A-G][b#♭♯]?(?:m|dim)?");
    private static final Pattern NUMBER = Pattern.compile("[b#♭♯]*[1-7].*|[b#♭♯]*[IViv]+[^A-Za-z]*");

    private ProgressionReading() {}

    private static List<String> tokens(String plain) {
        String text = AnswerText.hasWord(plain) ? withoutWords(plain) : plain.strip();
        if (TOGETHER.matcher(text).matches()) {
            return ONE_OF_MANY.matcher(text).results().map(MatchResult::group).toList();
        }
        Pattern between = BETWEEN.matcher(text).find() ? BETWEEN : HYPHEN;
        return between.splitAsStream(text).filter(token -> !token.isBlank()).toList();
    }

    private static String withoutWords(String plain) {
        String text = WORDED_FLAT.matcher(plain).replaceAll("b");
        for (int i = 1; i < NUMBER_WORDS.size(); i++) {
            text = NUMBER_WORDS.get(i).matcher(text).replaceAll(Integer.toString(i));
        }
        text = WORDED_MINOR.matcher(text).replaceAll("m");
        text = WORDED_MAJOR.matcher(text).replaceAll("");
        return AND.matcher(text).replaceAll(" ").strip();
    }

    /** @throws Unreadable if something in it is not a chord symbol */
    public static List<Chord> symbols(String plain, String example) {
        List<String> tokens = tokens(plain);
        if (tokens.stream().anyMatch(token -> NUMBER.matcher(token).matches() && !startsLikeChord(token))) {
            throw Unreadable.because(plain, 0, "a row of chord names", "those are numbers; name the chords", example);
        }
        return read(withMinor(tokens), Chord::parse);
    }

    /** Where some letters are large and some small, a small one says minor: {@code F C d Bb}. */
    private static List<String> withMinor(List<String> tokens) {
        boolean mixed = tokens.stream().anyMatch(token -> token.matches("[a-g][b#♭♯]?"))
                && tokens.stream().anyMatch(token -> token.matches("[A-G].*"));
        return !mixed
                ? tokens
                : tokens.stream()
                        .map(token -> token.matches("[a-g][b#♭♯]?") ? token + "m" : token)
                        .toList();
    }

    /** {@code b6} could be a chord on B; with a plain number beside it it is a number. */
    private static boolean startsLikeChord(String token) {
        return token.charAt(0) == 'b';
    }

    /** @throws Unreadable if something in it is neither a numeral nor a number */
    public static List<Chord> numbers(String plain, Key key, String example) {
        List<String> tokens = tokens(plain);
        if (tokens.stream().allMatch(token -> "ABCDEFG".indexOf(token.charAt(0)) >= 0)) {
            throw Unreadable.because(
                    plain, 0, "a row of numbers", "those are chord names; give their degrees", example);
        }
        return read(tokens, token -> DegreeReading.read(token, key).in(key));
    }

    private static List<Chord> read(List<String> tokens, java.util.function.Function<String, Chord> one) {
        List<Chord> chords = new ArrayList<>();
        tokens.forEach(token -> chords.add(one.apply(token)));
        return chords;
    }
}
