package monochord.practice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Reads notes as people write them: {@code Bb D F}, {@code b♭, d, f}, {@code bb-d-f}, {@code B♭/D/F}, {@code Bb, D and F},
 * {@code BbDF}. An octave number is read and left out.
 */
public final class NoteReading {
    private static final String WHAT = "a row of notes";
    private static final String ACCIDENTALS = "(?:[b#x♭♯]|𝄪|𝄫)*";
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;:/|&+.()\"'–—→>-]+");
    /** What joins notes, or says what each is in the chord. */
    private static final Set<String> BETWEEN_NOTES = Set.of(
            "and", "then", "plus", "with", "also", "added", "root", "third", "fifth", "seventh", "ninth", "bass", "top",
            "on", "bottom", "stay", "stays", "tonic");

    private static final Pattern NOTE = Pattern.compile("([A-Ga-g]" + ACCIDENTALS + ")-?[0-9]?");
    private static final Pattern NOTES_TOGETHER = Pattern.compile("(?:[A-G]" + ACCIDENTALS + ")+");
    private static final Pattern CAPITAL_NOTE = Pattern.compile("[A-G]" + ACCIDENTALS);

    private static final Pattern ARTICLE = Pattern.compile("^\\s*(?:[Aa]n|a|one) +(?=[A-G])");
    /** A small b and a figure are a lowered degree, not a note and its octave. */
    private static final Pattern DEGREE = Pattern.compile("[b♭#♯][1-7]|[1-7]|[b♭#♯]*[IViv]+[°oø]?");

    /** A note before a colon is the name of what is spelled. */
    private static final Pattern SUBJECT = Pattern.compile("^\\s*[A-G]" + ACCIDENTALS + "\\s*[:=](?=.*\\S\\s+\\S)");

    /** What notes are, wherever something else was given. */
    private static final Clause LETTERS = Clause.byNaming(
            "notes are the letters A to G with b or #",
            "notes are the letters A to H with is or es",
            "notes are the syllables Do to Si with b or #");

    private NoteReading() {}

    /** @throws Unreadable if something in it is not a note */
    public static List<NoteName> read(String plain, String example) {
        List<NoteName> notes = new ArrayList<>();
        String row = plain.indexOf(':') < 0 && plain.indexOf('=') < 0
                ? plain
                : SUBJECT.matcher(plain).replaceFirst("");
        for (String token : BETWEEN.split(row)) {
            if (!token.isEmpty() && !isBetween(token)) {
                addAll(notes, token, example);
            }
        }
        if (notes.isEmpty()) {
            throw Unreadable.because(plain, 0, WHAT, "no note stands in it", example);
        }
        return notes;
    }

    private static boolean isBetween(String token) {
        return token.length() > 1 && BETWEEN_NOTES.contains(token.toLowerCase(Locale.ROOT));
    }

    /**
     * A single note, perhaps with an article.
     *
     * @throws Unreadable if it is none, several, or the degree that was asked about
     */
    public static NoteName one(String plain, String example) {
        if (DEGREE.matcher(plain).matches()) {
            throw Unreadable.because(
                    plain, 0, "a note", "it says the degree; name the note that stands there", example);
        }
        List<NoteName> notes = read(ARTICLE.matcher(plain).replaceFirst(""), example);
        if (notes.size() > 1) {
            throw Unreadable.because(plain, 0, "a note", "one note is asked for, and several stand here", example);
        }
        return notes.get(0);
    }

    private static void addAll(List<NoteName> notes, String token, String example) {
        Matcher one = NOTE.matcher(token);
        if (one.matches()) {
            notes.add(NoteName.parse(one.group(1)));
        } else if (NOTES_TOGETHER.matcher(token).matches()) {
            CAPITAL_NOTE.matcher(token).results().forEach(found -> notes.add(NoteName.parse(found.group())));
        } else {
            throw Unreadable.because(token, 0, "a note", LETTERS, example);
        }
    }
}
