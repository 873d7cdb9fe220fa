package monochord.song.abc;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.note.Unreadable;

/**
 * A chord in quotes.
 *
 * <p>Source: the ABC standard 2.1, section 4.18; the bass in small letters and {@code +} for a sharp as old collections
 * have them.
 */
final class AbcSymbol {
    private AbcSymbol() {}

    /** As our chord symbols write it; none where it is no chord. */
    static Optional<Chord> chord(String quoted) {
        String text = quoted.strip().split("[;\\n]", 2)[0].replace('♯', '#').replace('♭', 'b');
        if (!text.isEmpty() && text.indexOf('(') > 0) {
            text = text.substring(0, text.indexOf('(')).strip();
        } else if (text.startsWith("(") && text.endsWith(")")) {
            text = text.substring(1, text.length() - 1).strip();
        }
        text = text.replace("/dim", "dim");
        if (text.isEmpty() || text.charAt(0) < 'A' || text.charAt(0) > 'G') {
            return Optional.empty();
        }
        int slash = text.lastIndexOf('/');
        return slash > 0 && slash + 1 < text.length()
                ? parse(text.substring(0, slash) + bass(text.substring(slash + 1)))
                        .or(() -> Optional.empty())
                : parse(text);
    }

    private static String bass(String text) {
        boolean isNote = text.matches("[A-Ga-g][#b+]?");
        return "/"
                + (isNote
                        ? Character.toUpperCase(text.charAt(0))
                                + text.substring(1).replace('+', '#')
                        : text);
    }

    private static Optional<Chord> parse(String text) {
        try {
            return Optional.of(Chord.parse(text.endsWith("min") ? text.substring(0, text.length() - 2) : text));
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }
}
