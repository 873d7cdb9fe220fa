package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import monochord.theory.note.Notated;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * Two or more chords as their voices sound them.
 *
 * <p>Text form: the chords between bars, each from the bottom voice up: {@code C3 G3 E4 C5 | A2 A3 E4 C5}. {@link #parse}
 * reads all that {@link #toString} writes, and commas between notes.
 *
 * @param chords the pitches of each chord, the bottom voice first; a voice may cross the one above it
 */
public record Passage(List<List<Pitch>> chords) implements Notated {
    /** Voices in a chord: one a finger. */
    public static final int MOST_VOICES = 10;

    /** Chords in a passage. */
    public static final int MOST_CHORDS = 512;

    /** @throws IllegalArgumentException if there are fewer than two chords, or a chord without a note */
    public Passage {
        chords = chords.stream().map(List::copyOf).toList();
        if (chords.size() < 2 || chords.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a passage needs two chords and a note in each, not " + chords);
        }
    }

    /** @throws Unreadable if the text is not two or more chords, or has more voices or chords than are read at once */
    public static Passage parse(String text) {
        return PassageText.parse(text);
    }

    /**
     * Whether a text is written in pitches and not in chord symbols. A token such as {@code C7} may be either: a text of
     * such tokens alone is taken for pitches if it has bars with two tokens or more in each, and an octave that hands
     * play in.
     */
    public static boolean isWrittenIn(String text) {
        return PassageText.looksLikeVoices(text);
    }

    /** Every change, in order: the first leads from chord 0 to chord 1. Nothing is left out, however short. */
    public List<MotionStep> steps() {
        List<MotionStep> steps = new ArrayList<>(chords.size() - 1);
        for (int i = 1; i < chords.size(); i++) {
            steps.add(MotionStep.between(chords.get(i - 1), chords.get(i)));
        }
        return steps;
    }

    @Override
    public String write(Signs signs) {
        return chords.stream().map(chord -> write(chord, signs)).collect(Collectors.joining(" | "));
    }

    /** The pitches of one chord in a row: {@code C3 G3 E4 C5}. */
    public static String write(List<Pitch> chord, Signs signs) {
        return chord.stream().map(pitch -> pitch.write(signs)).collect(Collectors.joining(" "));
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
