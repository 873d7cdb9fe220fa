package monochord.practice.reading;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.Unreadable;

/** The text of an answer, made plain: words for accidentals become signs, fillers and decoration go. */
public final class AnswerText {
    private static final int LONGEST = 300;

    /** Accidental signs in a row; a double one that is a sign of its own takes two characters. */
    private static final int MOST_ACCIDENTALS = 5;

    private static final Pattern ACCIDENTAL_WORD =
            Pattern.compile("(?i)(?<![a-z])([a-g])[ -]?(double[ -]?)?(flat|sharp|natural)s?(?![a-z])");
    private static final Pattern LONE_SIGN = Pattern.compile("(?<=[A-Ga-g]) +(?=[#♭♯])");
    private static final Pattern FILLER =
            Pattern.compile("(?i)(?<![a-z#♭♯])(the|it is|it's|is|notes?|i think)(?![a-z#♭♯])");

    private AnswerText() {}

    /** @throws Unreadable if nothing is written, or more than any answer could hold */
    public static String plain(String text, String what, String example) {
        if (text != null && text.length() > LONGEST) {
            throw Unreadable.because(text, LONGEST, what, "it is longer than any answer here", example);
        }
        String plain = text == null ? "" : withoutDecoration(text);
        if (plain.isEmpty()) {
            throw Unreadable.because("", 0, what, "nothing is written", example);
        }
        if (hasManyAccidentals(plain)) {
            throw Unreadable.because(plain, 0, what, "no note has so many accidentals", example);
        }
        return plain;
    }

    private static String withoutDecoration(String text) {
        String signed = withSigns(text.replace("♮", "").replace('−', '-').replace('\u00a0', ' '));
        return withoutFillers(joined(signed)).strip();
    }

    private static String joined(String text) {
        return hasAny(text, "#♭♯") ? LONE_SIGN.matcher(text).replaceAll("") : text;
    }

    private static String withoutFillers(String text) {
        return hasWord(text) || hasAny(text, "sS") ? FILLER.matcher(text).replaceAll(" ") : text;
    }

    private static boolean hasAny(String text, String characters) {
        for (int i = 0; i < text.length(); i++) {
            if (characters.indexOf(text.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether a word stands in it: three letters in a row. */
    static boolean hasWord(String text) {
        int letters = 0;
        for (int i = 0; i < text.length() && letters < 3; i++) {
            char c = Character.toLowerCase(text.charAt(i));
            letters = c >= 'a' && c <= 'z' ? letters + 1 : 0;
        }
        return letters == 3;
    }

    private static boolean hasManyAccidentals(String text) {
        int row = 0;
        for (int i = 0; i < text.length() && row < MOST_ACCIDENTALS; i++) {
            row = "b♭𝄫#♯x𝄪".indexOf(text.charAt(i)) >= 0 ? row + 1 : 0;
        }
        return row == MOST_ACCIDENTALS;
    }

    private static String withSigns(String text) {
        if (!hasWord(text)) {
            return text;
        }
        Matcher words = ACCIDENTAL_WORD.matcher(text);
        return words.replaceAll(found -> found.group(1) + sign(found.group(3), found.group(2) != null));
    }

    private static String sign(String word, boolean doubled) {
        String one = switch (word.charAt(0)) {
            case 'f', 'F' -> "b";
            case 's', 'S' -> "#";
            default -> "";
        };
        return doubled ? one + one : one;
    }
}
