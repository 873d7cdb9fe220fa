package monochord.text.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;

/**
 * Puts the learner's note names into an English sentence: the names of notes, keys and chords change, all else stays. A
 * capital letter is a name only where it stands by itself, and an A that begins a sentence only where {@link FirstWord} says
 * so.
 */
public final class InProse {
    private static final Pattern IN_WORDS =
            Pattern.compile("[ -](double[ -])?(flat|sharp)(?![A-Za-z])", Pattern.CASE_INSENSITIVE);
    /** What begins with a capital and means no note: a key of the computer, a weighting of decibels. */
    private static final List<String> NO_NAME = List.of("ctrl-", "dB(", "T, S, ");
    /** The letter of a dominant, in {@code S to D, the root rises}. */
    private static final Pattern DOMINANT = Pattern.compile("D(?: to [TSD])?, the root");

    private static final Pattern LETTERS = Pattern.compile("(?:a letter from|the letters) A to G( with b or #)?");

    private static final String WORD = "do";

    private final String text;
    private final Signs signs;
    private final List<Renaming> changes = new ArrayList<>();

    private InProse(String text, Signs signs) {
        this.text = text;
        this.signs = signs;
    }

    /** The sentence in these names; its accidentals are as printed or, where the signs ask for it, in ASCII. */
    public static String of(String text, Signs signs) {
        return Renaming.all(changes(text, signs), text);
    }

    /** What has to change, in order. */
    public static List<Renaming> changes(String text, Signs signs) {
        return signs.naming() == NoteNaming.ENGLISH ? List.of() : new InProse(text, signs).all();
    }

    private List<Renaming> all() {
        int place = 0;
        Matcher letters = LETTERS.matcher(text);
        if (letters.find()) {
            changes.add(new Renaming(letters.start(), letters.end(), allNames(letters.group(1) != null)));
            place = letters.end();
        }
        while (place < text.length()) {
            boolean begins = "ABCDEFG".indexOf(text.charAt(place)) >= 0 && isFree(place);
            place = begins ? Math.max(place + 1, name(place)) : place + 1;
        }
        return changes;
    }

    private String allNames(boolean accidentals) {
        boolean german = signs.naming() == NoteNaming.GERMAN;
        return accidentals
                ? german ? "the letters A to H with is or es" : "the syllables Do to Si with b or #"
                : german ? "a letter from A to H" : "a syllable from Do to Si";
    }

    /** Whether a name may begin here: not inside a word, a path or an accidental. */
    private boolean isFree(int place) {
        if (place == 0) {
            return true;
        }
        char before = text.charAt(place - 1);
        boolean inWord = Character.isLetterOrDigit(before) || "_#♯♭\uDD2A\uDD2B".indexOf(before) >= 0;
        boolean bass = before == '/'
                && !changes.isEmpty()
                && isChord(changes.get(changes.size() - 1).to(), place - 1);
        return bass || !inWord && before != '/' && !isMeantOtherwise(place);
    }

    private boolean isMeantOtherwise(int place) {
        return NO_NAME.stream()
                        .anyMatch(
                                before -> text.regionMatches(true, place - before.length(), before, 0, before.length()))
                || DOMINANT.matcher(text).region(place, text.length()).lookingAt();
    }

    /** Whether between the last name and the slash stands nothing but the kind of a chord. */
    private boolean isChord(int from, int slash) {
        return text.substring(from, slash).indexOf(' ') < 0;
    }

    /** Changes the name that begins here, if one does, and says where to go on. */
    private int name(int place) {
        if (isArticle(place)) {
            return place + 1;
        }
        for (NoteNaming.FoundName found : NoteNaming.ENGLISH.find(text, place)) {
            int end = Suffix.end(text, found.end());
            if (end >= 0 && !isWord(place, end)) {
                return change(place, found, end);
            }
        }
        return place + 1;
    }

    private boolean isWord(int from, int end) {
        return text.charAt(end - 1) == 'o' && end - from == WORD.length();
    }

    private boolean isArticle(int place) {
        return text.charAt(place) == 'A' && FirstWord.isArticle(text, place);
    }

    private int change(int place, NoteNaming.FoundName found, int end) {
        Matcher words = IN_WORDS.matcher(text).region(found.end(), text.length());
        boolean spelledOut = found.end() == place + 1 && end == found.end() && words.lookingAt();
        int to = spelledOut ? words.end() : found.end();
        NoteName name = spelledOut ? NoteName.of(found.name().letter(), alteration(words)) : found.name();
        changes.add(new Renaming(place, to, name.write(signs)));
        return spelledOut ? to : end;
    }

    private static int alteration(Matcher words) {
        int one = words.group(2).equalsIgnoreCase("flat") ? -1 : 1;
        return words.group(1) == null ? one : 2 * one;
    }
}
