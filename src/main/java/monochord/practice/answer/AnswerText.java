package monochord.practice.answer;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Unreadable;

/** The text of an answer, made plain: words for accidentals become signs, fillers and decoration go. */
final class AnswerText {
    private static final int LONGEST = 300;
    private static final Pattern ACCIDENTAL_WORD =
            Pattern.compile("(?i)(?<![a-z])([a-g])[ -]?(double[ -]?)?(flat|sharp|natural)s?(?![a-z])");
    private static final Pattern LONE_SIGN = Pattern.compile("(?<=[A-Ga-g]) +(?=[#♭♯])");
    private static final Pattern FILLER =
            Pattern.compile("(?i)(?<![a-z#♭♯])(the|it is|it's|is|notes?|i think)(?![a-z#♭♯])");

    private AnswerText() {}

    /** @throws Unreadable if the text is longer than any answer could be, or empty */
    static String plain(String text, String what, String example) {
        if (text == null || text.isBlank()) {
            throw Unreadable.because("", 0, what, "nothing is written", example);
        }
        if (text.length() > LONGEST) {
            throw Unreadable.because(text, LONGEST, what, "it is longer than any answer here", example);
        }
        String signed = text.replace("♮", "").replace('−', '-').replace('\u00a0', ' ');
        signed = LONE_SIGN.matcher(withSigns(signed)).replaceAll("");
        return FILLER.matcher(signed).replaceAll(" ").strip();
    }

    private static String withSigns(String text) {
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
