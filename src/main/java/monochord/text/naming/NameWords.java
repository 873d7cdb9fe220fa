package monochord.text.naming;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.NoteNaming.FoundName;

/** The words that follow a note name: {@code si bémol}, {@code fa doble sostenido}, {@code Es-Dur}, {@code do mineur}. */
final class NameWords {
    private static final int ANY_CASE = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
    private static final String END = "(?!\\p{L})";
    private static final String TWICE = "(doble |double |doppio |duplo |dobrado )?";
    private static final Pattern SIGN = Pattern.compile(
            "[ -]" + TWICE + "(?:(b[eé]moll?e?s?)|(?:di[eèé]s[ei]?s?|sostenido|sustenido))" + END, ANY_CASE);
    private static final Pattern MODE =
            Pattern.compile("[ -]?(?:(dur|majeur|mayor|maior|maggiore)|(?:moll|mineur|menor|minore))" + END, ANY_CASE);

    private NameWords() {}

    /** The name with the accidental that follows it as a word. */
    static FoundName signs(NoteNaming naming, String text, FoundName found) {
        Matcher sign = SIGN.matcher(text).region(found.end(), text.length());
        if (naming != NoteNaming.LATIN || found.name().alteration() != 0 || !sign.lookingAt()) {
            return found;
        }
        int alteration = (sign.group(2) == null ? 1 : -1) * (sign.group(1) == null ? 1 : 2);
        return new FoundName(NoteName.of(found.name().letter(), alteration), sign.end());
    }

    /** Says major or minor where that is said behind a name, and where to go on. */
    static int mode(NoteNaming naming, String text, int from, List<Renaming> changes) {
        Matcher mode = MODE.matcher(text).region(from, text.length());
        if (naming == NoteNaming.ENGLISH || !mode.lookingAt()) {
            return from;
        }
        changes.add(new Renaming(from, mode.end(), mode.group(1) == null ? " minor" : " major"));
        return mode.end();
    }
}
