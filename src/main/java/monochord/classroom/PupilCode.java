package monochord.classroom;

import java.util.regex.Pattern;
import monochord.text.SafeText;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * What stands for a pupil in every file: {@code 7b-04}. Whose it is, only the teacher's own list says. Two codes are equal
 * when they have the same letters, small or capital.
 *
 * @param text letters, digits and hyphens, at most {@value #LONGEST}, in small letters
 */
public record PupilCode(String text) {
    public static final int LONGEST = 16;

    private static final Pattern FORM = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,14}[a-z0-9])?");

    /** @throws IllegalArgumentException if the text is no code in small letters */
    public PupilCode {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("a code has small letters, digits and hyphens, not \"" + text + "\"");
        }
    }

    /** @throws Unreadable if the text is no code */
    public static PupilCode parse(String text) {
        String small = text.length() > LONGEST ? text : smallLetters(text.strip());
        if (!FORM.matcher(small).matches()) {
            throw Unreadable.because(
                    SafeText.oneLine(text),
                    0,
                    "a pupil's code",
                    Clause.of("expected letters, digits and hyphens, at most {0}", LONGEST),
                    "7b-04");
        }
        return new PupilCode(small);
    }

    private static String smallLetters(String text) {
        StringBuilder small = new StringBuilder(text.length());
        text.chars().map(c -> c >= 'A' && c <= 'Z' ? c + 32 : c).forEach(c -> small.append((char) c));
        return small.toString();
    }

    @Override
    public String toString() {
        return text;
    }
}
