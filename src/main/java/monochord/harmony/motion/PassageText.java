package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Clause;
import monochord.theory.Pitch;
import monochord.theory.Unreadable;

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
    private final List<List<Pitch>> chords = new ArrayList<>();

    private PassageText(String text) {
        this.text = text;
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
        while (start <= text.length()) {
            int bar = text.indexOf('|', start);
            int end = bar < 0 ? text.length() : bar;
            chord(start, end);
            start = end + 1;
        }
        if (chords.size() < 2) {
            throw refused(text.length(), Clause.of("a bar line stands between two chords or more"));
        }
        return new Passage(chords);
    }

    private void chord(int start, int end) {
        List<Pitch> chord = new ArrayList<>();
        Matcher token = TOKEN.matcher(text).region(start, end);
        while (token.find()) {
            chord.add(pitch(token.group(), token.start()));
            if (chord.size() > Passage.MOST_VOICES) {
                throw refused(token.start(), Clause.of("a chord here has at most {0} voices", Passage.MOST_VOICES));
            }
        }
        if (!chord.isEmpty()) {
            add(chord, start);
        } else if (!chords.isEmpty() && end < text.length()) {
            throw refused(end, Clause.of("there is no chord between two bar lines"));
        }
    }

    private void add(List<Pitch> chord, int place) {
        if (chords.size() == Passage.MOST_CHORDS) {
            throw refused(place, Clause.of("at most {0} chords are read at once", Passage.MOST_CHORDS));
        }
        chords.add(chord);
    }

    private Pitch pitch(String token, int place) {
        try {
            return Pitch.parse(token);
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, place);
        }
    }

    private Unreadable refused(int place, Clause why) {
        return Unreadable.because(text, place, WHAT, why, EXAMPLE);
    }
}
