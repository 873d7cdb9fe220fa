package monochord.practice.reading;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.BandNumber;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Unreadable;

/** Reads a numeral, a number, or the words for them: {@code vi}, {@code 6-}, {@code the lowered sixth}, {@code six minor}. */
public final class DegreeReading {
    private static final List<SpokenWord> WORDS = List.of(
            word("(?:of )?(?:scale|key)", ""),
            word("(?:degree|chord|triad|step|number|no)", ""),
            new SpokenWord(Pattern.compile("(?i)(?<=[a-z]) one$"), ""),
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
            word("(?:half[ -]diminished)", "ø7"),
            word("(?:diminished|dim)", "o"),
            word("augmented", "aug"));
    private static final Pattern QUALITY_FIRST = Pattern.compile("^([-Mo]) *([b#♭♯]? *[1-7])$");
    private static final Pattern FIGURES = Pattern.compile("(?<=[IViv°oøº]) *([64]) ?/ ?([5432])(?![a-zA-Z0-9])");
    private static final Pattern POSITION =
            Pattern.compile("(?i)(.*?)[ ,]*(?:in )?(?:root position|(first|1st|second|2nd|third|3rd) inversion)");
    private static final List<String> TRIAD_FIGURES = List.of("", "6", "64", "64");
    private static final List<String> SEVENTH_FIGURES = List.of("7", "65", "43", "42");
    private static final Pattern NUMERAL = Pattern.compile("[b#♭♯]*[IViv]+.*");
    /** The six-four chord before a cadence, read as a delayed dominant. */
    private static final Pattern CADENTIAL = Pattern.compile("^V6/?4 ?[-–] ?5/?3$");

    private static final Pattern HAS_WORD = Pattern.compile("[A-Za-z]{3,}|[0-9](?:st|nd|rd|th)");

    private DegreeReading() {}

    private static SpokenWord word(String written, String meant) {
        return new SpokenWord(Pattern.compile("(?i)(?<![a-z0-9])" + written + "(?![a-z0-9])"), meant);
    }

    /** @throws Unreadable if the text is neither a numeral nor a number */
    public static Numeral read(String plain, Key key) {
        String figured = plain.indexOf('^') < 0 ? withFigures(plain, key) : withFigures(plain.replace("^", ""), key);
        String text = HAS_WORD.matcher(figured).find() ? withoutWords(figured) : figured.replace(" ", "");
        boolean number =
                text.codePoints().filter(c -> "b#♭♯".indexOf(c) < 0).limit(1).allMatch(c -> c >= '1' && c <= '7');
        return number ? BandNumber.parse(text, key) : Numeral.parse(text);
    }

    /** Whether it begins as a Roman numeral does. */
    public static boolean isNumeral(String plain) {
        return NUMERAL.matcher(plain).matches();
    }

    /** {@code V6/5} and {@code V7 first inversion} as {@code V65}. */
    private static String withFigures(String plain, Key key) {
        Matcher position = plain.contains("nversion") || plain.contains("osition") ? POSITION.matcher(plain) : null;
        if (position == null || !position.matches()) {
            return plain.indexOf('/') < 0
                    ? plain
                    : FIGURES.matcher(CADENTIAL.matcher(plain).replaceFirst("Cad64"))
                            .replaceFirst("$1$2");
        }
        String chord = read(position.group(1).strip(), key).toString();
        int place = position.group(2) == null ? 0 : ChordReading.place(position.group(2));
        boolean seventh = chord.endsWith("7");
        String root = seventh ? chord.substring(0, chord.length() - 1) : chord;
        return root + (seventh ? SEVENTH_FIGURES : TRIAD_FIGURES).get(place);
    }

    private static String withoutWords(String plain) {
        String text = SpokenWord.replace(WORDS, plain);
        return QUALITY_FIRST
                .matcher(text.replaceFirst(", *(?=[-Mo]$)", "").strip())
                .replaceAll("$2$1")
                .replace(" ", "");
    }
}
