package monochord.text.naming;

import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.note.Unreadable;

/** What may stand behind a note name: nothing, an octave, a kind of chord. */
final class Suffix {
    private static final int LONGEST = 30;
    private static final Pattern OCTAVE = Pattern.compile("-?[0-9]{1,2}");
    private static final String AT_END = ".,;:!?)]\"'’”…|";

    private Suffix() {}

    /** Where the suffix that begins there ends; −1 if what stands there belongs to no note or chord. */
    static int end(String text, int from) {
        int end = from;
        while (end < text.length() && end < from + LONGEST && !isGap(text.charAt(end))) {
            end++;
        }
        while (end > from && !stands(text, from, end)) {
            end--;
        }
        return stands(text, from, end) ? end : -1;
    }

    private static boolean isGap(char c) {
        return Character.isWhitespace(c) || c == '|' || c == '→' || c == '–' || c == '—' || c == ':';
    }

    private static boolean stands(String text, int from, int end) {
        return isApart(text, end) && isSuffix(text.substring(from, end));
    }

    /** Whether a word or a name of a file cannot go on there. */
    private static boolean isApart(String text, int end) {
        if (end >= text.length()) {
            return true;
        }
        int next = text.codePointAt(end);
        boolean fileName = next == '.' && end + 1 < text.length() && Character.isLetter(text.charAt(end + 1));
        return !Character.isLetterOrDigit(next) && "_#♯♭+°øΔ".indexOf(next) < 0 && !isDouble(next) && !fileName;
    }

    private static boolean isDouble(int c) {
        return c == 0x1D12A || c == 0x1D12B;
    }

    private static boolean isSuffix(String text) {
        return text.isEmpty()
                || AT_END.indexOf(text.charAt(text.length() - 1)) < 0 && isOctaveOrKind(text)
                || text.endsWith(")") && text.indexOf('(') > 0 && isOctaveOrKind(text)
                || text.startsWith("(") && text.endsWith(")") && isOctaveOrKind(text);
    }

    private static boolean isOctaveOrKind(String text) {
        return OCTAVE.matcher(text).matches() || isKind(text);
    }

    private static boolean isKind(String text) {
        try {
            return !Chord.parse("C" + text).isInverted();
        } catch (Unreadable none) {
            return false;
        }
    }
}
