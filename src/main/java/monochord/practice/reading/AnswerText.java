package monochord.practice.reading;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Unreadable;

/** The text of an answer, made plain: words for accidentals become signs, fillers and decoration go. */
public final class AnswerText {
    private static final int LONGEST = 300;
    private static final Pattern ACCIDENTAL_WORD =
            Pattern.compile("(?i)(?<![a-z])([a-g])[ -]?(double[ -]?)?(flat|sharp|natural)s?(?![a-z])");
    private static final Pattern LONE_SIGN = Pattern.compile("(?<=[A-Ga-g]) +(?=[#♭♯])");
    private static final Pattern TOO_MANY_ACCIDENTALS = Pattern.compile("(?:[b♭]|𝄫){5}|(?:[#♯x]|𝄪){5}");
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
        if (TOO_MANY_ACCIDENTALS.matcher(plain).find()) {
            throw Unreadable.because(plain, 0, what, "no note has so many accidentals", example);
        }
        return plain;
    }

    private static String withoutDecoration(String text) {
        String signed = withSigns(text.replace("♮", "").replace('−', '-').replace('\u00a0', ' '));
        return withoutFillers(LONE_SIGN.matcher(signed).replaceAll("")).strip();
    }

    private static String withoutFillers(String text) {
        return hasAny(text, "tTsSkK") ? FILLER.matcher(text).replaceAll(" ") : text;
    }

    private static boolean hasAny(String text, String characters) {
        return text.chars().anyMatch(c -> characters.indexOf(c) >= 0);
    }

    private static String withSigns(String text) {
        if (!hasAny(text, "lLhH")) {
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
