package monochord.harmony;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.harmony.Music.Notes;
import monochord.theory.Chord;
import monochord.theory.note.Clause;
import monochord.theory.note.Cursor;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/** Reads notes, and knows which rows of letters are meant as notes and which as chords. */
final class NotesText {
    private static final int MOST = 2000;
    private static final String WORD = "notes";
    private static final Pattern NOTE = Pattern.compile("[A-Ga-g](?:bb?|##?|x|♭♭?|♯♯?|𝄪|𝄫)?");
    private static final Pattern PITCH = Pattern.compile(NOTE + "(?:-1|10|\\d)");
    private static final Pattern HYPHENED = Pattern.compile(NOTE + "(?:-" + NOTE + ")+");

    private static final String SPACES = ", \t\n\u000B\f\r";
    private static final String LETTERS = "ABCDEFGabcdefg";

    /** As in {@code C4}, which is a chord symbol too, but one that few write and no one writes in a row. */
    private static final String RARE_AS_CHORD = "4";

    /** The second half of a double accidental's sign counts too. */
    private static final String BEFORE_AN_OCTAVE = "ABCDEFGabcdefg#x-1♭♯" + "𝄪𝄫";

    private final String text;
    private final Cursor cursor;
    private final List<NoteName> names = new ArrayList<>();
    private final List<Pitch> pitches = new ArrayList<>();

    private NotesText(String text) {
        this.text = text;
        this.cursor = new Cursor(text, "a row of notes", "notes C4 E4 G4");
    }

    /**
     * Nothing if the text does not look like notes.
     *
     * @throws Unreadable if it begins with the word {@code notes} and goes on with something else
     */
    static Optional<Music> read(String text) {
        NotesText notes = new NotesText(text);
        return notes.takeWord() || looksLikeNotes(text) ? Optional.of(notes.rest()) : Optional.empty();
    }

    /** Takes the word that says that notes follow, if it stands there by itself. */
    private boolean takeWord() {
        cursor.takeWhile(Character::isWhitespace);
        boolean there = text.regionMatches(true, cursor.place(), WORD, 0, WORD.length())
                && cursor.takeWhile(c -> !Character.isWhitespace(c)).length() == WORD.length();
        if (!there) {
            cursor.back(0);
        }
        return there;
    }

    /** Most lines end in no octave and have neither comma nor hyphen, and are spared the closer look. */
    private static boolean looksLikeNotes(String text) {
        String stripped = text.strip();
        int last = stripped.length() - 1;
        boolean octave = last > 0
                && Character.isDigit(stripped.charAt(last))
                && BEFORE_AN_OCTAVE.indexOf(stripped.charAt(last - 1)) >= 0;
        return (octave || text.indexOf(',') >= 0 || text.indexOf('-') >= 0) && tokensLookLikeNotes(text);
    }

    private static boolean tokensLookLikeNotes(String text) {
        List<String> tokens = tokens(text);
        if (tokens.size() < 2) {
            return tokens.size() == 1 && PITCH.matcher(tokens.get(0)).matches() && !isChord(tokens.get(0));
        }
        return allMatch(PITCH, tokens) && tokens.stream().anyMatch(NotesText::isHardlyChord)
                || allMatch(NOTE, tokens) && (text.indexOf(',') >= 0 || isHyphened(text));
    }

    private static List<String> tokens(String text) {
        Cursor cursor = new Cursor(text, "", "");
        List<String> tokens = new ArrayList<>();
        skipSpace(cursor);
        while (!cursor.atEnd() && tokens.size() <= MOST) {
            tokens.add(nextToken(cursor));
            skipSpace(cursor);
        }
        return tokens;
    }

    private static void skipSpace(Cursor cursor) {
        cursor.takeUntil(() -> !endsToken(cursor));
    }

    private static String nextToken(Cursor cursor) {
        return cursor.takeUntil(() -> endsToken(cursor));
    }

    /** A token ends at a space, a comma, or a hyphen with a letter behind it. */
    private static boolean endsToken(Cursor cursor) {
        return SPACES.indexOf(cursor.peek()) >= 0 || cursor.aheadThenAny("-", LETTERS);
    }

    private static boolean allMatch(Pattern pattern, List<String> tokens) {
        return tokens.stream().allMatch(token -> pattern.matcher(token).matches());
    }

    private static boolean isHyphened(String text) {
        return text.length() < MOST && HYPHENED.matcher(text.strip()).matches();
    }

    private static boolean isHardlyChord(String pitch) {
        return pitch.endsWith(RARE_AS_CHORD) || !isChord(pitch);
    }

    private static boolean isChord(String token) {
        try {
            Chord.parse(token);
            return true;
        } catch (Unreadable otherwise) {
            return false;
        }
    }

    private Notes rest() {
        skipSpace(cursor);
        while (!cursor.atEnd()) {
            int place = cursor.place();
            add(nextToken(cursor), place);
            skipSpace(cursor);
        }
        if (names.isEmpty()) {
            throw cursor.because(Clause.of("a note is missing behind the word"));
        }
        return new Notes(names, pitches);
    }

    private void add(String token, int place) {
        if (names.size() == MOST) {
            throw cursor.because(place, Clause.of("at most {0} notes are read at once", MOST));
        }
        boolean pitch = Character.isDigit(token.charAt(token.length() - 1));
        if (!names.isEmpty() && pitch == pitches.isEmpty()) {
            throw cursor.because(place, Clause.of("either every note has an octave or none has"));
        }
        try {
            add(token, pitch);
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, place);
        }
    }

    private void add(String token, boolean pitch) {
        if (pitch) {
            pitches.add(Pitch.parse(token));
        }
        names.add(pitch ? pitches.get(pitches.size() - 1).name() : NoteName.parse(token));
    }
}
