package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import monochord.theory.note.Clause;
import monochord.theory.note.Cursor;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/** Reads chords written as pitches between bars. */
final class PassageText {
    private static final String WHAT = "a row of voiced chords";
    private static final String EXAMPLE = "C3 G3 E4 C5 | A2 A3 E4 C5";
    private static final Pattern TOKEN = Pattern.compile("[^\\s,|]+");
    private static final String NOTE = "[A-Ga-g](?:bb?|##?|x|♭♭?|♯♯?|𝄪|𝄫)?";
    private static final Pattern PITCH = Pattern.compile(NOTE + "(?:[-−]1|10|\\d)");

    /** No chord symbol ends so. */
    private static final Pattern SURELY_PITCH = Pattern.compile(NOTE + "(?:[-−]1|10|[01348])");

    /** No one plays chords up there, and everyone writes sevenths. */
    private static final Pattern HIGH = Pattern.compile(NOTE + "[679]");

    private final String text;
    private final Cursor cursor;
    private final List<List<Pitch>> chords = new ArrayList<>();

    private PassageText(String text) {
        this.text = text;
        this.cursor = new Cursor(text, WHAT, EXAMPLE);
    }

    static boolean looksLikeVoices(String text) {
        List<String> tokens =
                TOKEN.matcher(text).results().map(MatchResult::group).toList();
        return tokens.stream().anyMatch(token -> SURELY_PITCH.matcher(token).matches())
                || text.indexOf('|') >= 0
                        && tokens.stream()
                                .allMatch(token -> PITCH.matcher(token).matches())
                        && !tokens.stream()
                                .allMatch(token -> HIGH.matcher(token).matches())
                        && Arrays.stream(text.split("\\|")).allMatch(PassageText::hasTwoTokens);
    }

    private static boolean hasTwoTokens(String chord) {
        return chord.isBlank() || TOKEN.matcher(chord).results().limit(2).count() == 2;
    }

    static Passage parse(String text) {
        return new PassageText(text).read();
    }

    private Passage read() {
        int start = 0;
        List<Pitch> chord = new ArrayList<>();
        for (String word = cursor.nextWord(); !word.isEmpty(); word = cursor.nextWord()) {
            int place = cursor.place() - word.length();
            if (word.equals("|")) {
                close(chord, start, place);
                start = cursor.place();
                chord.clear();
            } else {
                sound(chord, word, place);
            }
        }
        if (!chord.isEmpty()) {
            add(chord, start);
        }
        if (chords.size() < 2) {
            throw cursor.because(text.length(), "a bar line stands between two chords or more");
        }
        return new Passage(chords);
    }

    private void sound(List<Pitch> chord, String word, int place) {
        chord.add(pitch(word, place));
        if (chord.size() > Passage.MOST_VOICES) {
            throw cursor.because(place, Clause.of("a chord here has at most {0} voices", Passage.MOST_VOICES));
        }
    }

    /** A bar line may stand ahead of the first chord, but never beside another. */
    private void close(List<Pitch> chord, int start, int bar) {
        if (!chord.isEmpty()) {
            add(chord, start);
        } else if (!chords.isEmpty()) {
            throw cursor.because(bar, "there is no chord between two bar lines");
        }
    }

    private void add(List<Pitch> chord, int place) {
        if (chords.size() == Passage.MOST_CHORDS) {
            throw cursor.because(place, Clause.of("at most {0} chords are read at once", Passage.MOST_CHORDS));
        }
        chords.add(List.copyOf(chord));
    }

    private Pitch pitch(String token, int place) {
        try {
            return Pitch.parse(token);
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, place);
        }
    }
}
