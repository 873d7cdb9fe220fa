package monochord.practice.reading;

import java.util.List;
import java.util.regex.Pattern;
import monochord.theory.BandNumber;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Unreadable;

/** Reads a numeral, a number, or the words for them: {@code vi}, {@code 6-}, {@code the lowered sixth}, {@code six minor}. */
public final class DegreeReading {
    private record Word(Pattern written, String meant) {}

    private static final List<Word> WORDS = List.of(
            word("(?:degree|chord|triad)", ""),
            word("(?:flat|lowered)", "b"),
            word("(?:sharp|raised)", "#"),
            word("(?:one|first|tonic|1st)", "1"),
            word("(?:two|second|supertonic|2nd)", "2"),
            word("(?:three|third|mediant|3rd)", "3"),
            word("(?:four|fourth|subdominant|4th)", "4"),
            word("(?:five|fifth|dominant|5th)", "5"),
            word("(?:six|sixth|submediant|6th)", "6"),
            word("(?:seven|seventh|subtonic|7th)", "7"),
            word("minor", "-"),
            word("major", "M"),
            word("diminished", "o"),
            word("augmented", "aug"));
    private static final Pattern QUALITY_FIRST = Pattern.compile("^([-Mo]) *([b#♭♯]? *[1-7])$");
    private static final Pattern HAS_WORD = Pattern.compile("[A-Za-z]{3,}|[0-9](?:st|nd|rd|th)");

    private DegreeReading() {}

    private static Word word(String written, String meant) {
        return new Word(Pattern.compile("(?i)(?<![a-z0-9])" + written + "(?![a-z0-9])"), meant);
    }

    /** @throws Unreadable if the text is neither a numeral nor a number */
    public static Numeral read(String plain, Key key) {
        String text = HAS_WORD.matcher(plain).find() ? withoutWords(plain) : plain;
        boolean number =
                text.codePoints().filter(c -> "b#♭♯".indexOf(c) < 0).limit(1).allMatch(c -> c >= '1' && c <= '7');
        return number ? BandNumber.parse(text, key) : Numeral.parse(text);
    }

    private static String withoutWords(String plain) {
        String text = plain;
        for (Word word : WORDS) {
            text = word.written.matcher(text).replaceAll(word.meant);
        }
        return QUALITY_FIRST.matcher(text.strip()).replaceAll("$2$1").replace(" ", "");
    }
}
