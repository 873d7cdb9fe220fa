package monochord.lesson;

import java.util.Collection;
import monochord.text.Nearest;
import monochord.theory.Unreadable;

/**
 * Something wrong in a piece of text, before it is known where in a file the piece stands.
 *
 * @param place index of the first character that does not fit, from 0
 * @param what a clause that says what was found
 * @param instead a clause that says what to write
 */
public record Trouble(int place, String what, String instead) {
    public static Trouble of(Unreadable unreadable) {
        return new Trouble(unreadable.place(), unreadable.trouble().toString(), "write for example " + unreadable.example());
    }

    /**
     * A word that is not one of those that may stand there.
     *
     * @param kind what the words are: {@code skill}
     */
    public static Trouble unknown(int place, String kind, String word, Collection<String> known) {
        String instead = Nearest.to(word, known)
                .map(near -> "write " + near)
                .orElseGet(() -> "write one of " + String.join(", ", known));
        return new Trouble(place, "unknown " + kind + " \"" + shortened(word) + "\"", instead);
    }

    private static String shortened(String word) {
        return word.codePointCount(0, word.length()) <= 40
                ? word
                : word.substring(0, word.offsetByCodePoints(0, 40)) + "…";
    }
}
