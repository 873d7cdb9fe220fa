package monochord.harmony;

import java.util.List;
import java.util.stream.IntStream;
import monochord.theory.Chord;
import monochord.theory.Degree;
import monochord.theory.Interval;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.TriadQuality;

/**
 * How a melody note stands over a chord on a strong beat.
 *
 * <p>A tone of the chord rests. A note a whole step above one colours it, and so does a seventh where there is none. A note
 * a half step above a chord tone clashes, but the fourth over a major third may be a suspension. What is left clashes. On a
 * weak beat anything may pass. Common practice, no source.
 */
public enum Tension {
    CHORD_TONE,
    COLOUR,
    /** It may stand, and asks to move on: a major seventh over a minor chord. */
    TENSE,
    /** A fourth over a major third: only on its way down. */
    SUSPENSION,
    CLASH;

    private static final int OCTAVE = 12;
    private static final int NINTH = 2;
    private static final int ELEVENTH = 5;
    private static final int SIXTH = 9;
    private static final int MAJOR_SEVENTH = 11;

    public static Tension of(NoteName note, Chord chord) {
        int above = Math.floorMod(note.pitchClass() - chord.root().pitchClass(), OCTAVE);
        if (isTone(above, chord)) {
            return CHORD_TONE;
        }
        boolean halfStepAbove = isTone(above - 1, chord);
        if (above >= lowestSeventh(chord)
                && !halfStepAbove
                && chord.kind().interval(7).isEmpty()) {
            return seventh(above, chord.kind().quality());
        }
        boolean eleventh = above == ELEVENTH && chord.kind().holds(Interval.MAJOR_THIRD);
        if (halfStepAbove || !isTone(above - 2, chord)) {
            return halfStepAbove && eleventh ? SUSPENSION : CLASH;
        }
        return above == NINTH && isDiminished(chord) ? TENSE : COLOUR;
    }

    private static boolean isTone(int above, Chord chord) {
        int key = Math.floorMod(above + chord.root().pitchClass(), OCTAVE);
        return chord.tones().stream().anyMatch(tone -> tone.pitchClass() == key);
    }

    private static boolean isDiminished(Chord chord) {
        return chord.kind().quality() == TriadQuality.DIMINISHED;
    }

    /** A diminished seventh counts as one over a diminished chord. */
    private static int lowestSeventh(Chord chord) {
        return isDiminished(chord) ? SIXTH : SIXTH + 1;
    }

    private static Tension seventh(int above, TriadQuality quality) {
        return above < MAJOR_SEVENTH
                ? COLOUR
                : switch (quality) {
                    case MINOR -> TENSE;
                    case DIMINISHED -> CLASH;
                    default -> COLOUR;
                };
    }

    /** The degrees of the key's own scale whose notes stand so over the chord, from the tonic up. */
    public static List<Degree> degrees(Chord chord, Key key, Tension tension) {
        return IntStream.rangeClosed(1, 7)
                .mapToObj(key.mode()::degree)
                .filter(degree -> of(key.note(degree), chord) == tension)
                .toList();
    }
}
