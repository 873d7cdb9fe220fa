package monochord.practice.reading;

import java.util.ArrayList;
import java.util.List;
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
    private static final Pattern NOTE = Pattern.compile("([A-Ga-g]" + ACCIDENTALS + ")-?[0-9]?");
    private static final Pattern NOTES_TOGETHER = Pattern.compile("(?:[A-G]" + ACCIDENTALS + ")+");
    private static final Pattern CAPITAL_NOTE = Pattern.compile("[A-G]" + ACCIDENTALS);

    /** What notes are, wherever something else was given. */
    private static final Clause LETTERS = Clause.byNaming(
            "notes are the letters A to G with b or #",
            "notes are the letters A to H with is or es",
            "notes are the syllables Do to Si with b or #");

    private NoteReading() {}

    /** @throws Unreadable if something in it is not a note */
    public static List<NoteName> read(String plain, String example) {
        List<NoteName> notes = new ArrayList<>();
        for (String token : BETWEEN.split(plain)) {
            if (!token.isEmpty() && !token.equalsIgnoreCase("and") && !token.equalsIgnoreCase("then")) {
                addAll(notes, token, example);
            }
        }
        if (notes.isEmpty()) {
            throw Unreadable.because(plain, 0, WHAT, "no note stands in it", example);
        }
        return notes;
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
