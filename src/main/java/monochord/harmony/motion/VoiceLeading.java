package monochord.harmony.motion;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntBinaryOperator;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * How near two chords lie to each other: the notes they share, and the half steps that all voices move in the shortest way.
 *
 * <p>The shortest way is the least over all ways to join the notes of one chord to those of the other. They are joined one
 * to one; where one chord has more, each of its notes is joined to one of the thinner chord and none of those is left out,
 * so that a note of the thinner chord is doubled for each that the other has more.
 *
 * <p>Source: the figures of Integrated Music Theory (open university course text), lesson 19b, for triads; for chords of
 * different fullness our own rule.
 *
 * <p>Which voice goes on as which, where each is followed by itself, is another question: {@link MotionStep} answers it.
 */
public final class VoiceLeading {
    private static final int OCTAVE = 12;
    private static final int UNREACHED = 1_000_000;
    private static final int MOST_NOTES = 12;

    private VoiceLeading() {}

    /** The notes of the first that sound in the second too, in some octave; in the first's spelling and order, each once. */
    public static List<NoteName> commonTones(List<NoteName> from, List<NoteName> to) {
        return from.stream()
                .filter(tone -> to.stream().anyMatch(tone::soundsLike))
                .distinct()
                .toList();
    }

    /** The same of the tones of two chords; the bass is left open. */
    public static List<NoteName> commonTones(Chord from, Chord to) {
        return commonTones(from.tones(), to.tones());
    }

    /**
     * Half steps between two chords in closest position, each tone by the shorter way round the octave. A bass note from
     * outside the chord does not count.
     */
    public static int halfSteps(Chord from, Chord to) {
        return halfStepsOfNames(from.tones(), to.tones());
    }

    /**
     * The same between notes whose octaves are left open.
     *
     * @param from one to twelve names
     * @param to one to twelve names
     * @throws IllegalArgumentException if there are fewer or more names
     */
    static int halfStepsOfNames(List<NoteName> from, List<NoteName> to) {
        return least(
                from.stream().mapToInt(NoteName::pitchClass).toArray(),
                to.stream().mapToInt(NoteName::pitchClass).toArray(),
                VoiceLeading::roundTheOctave);
    }

    /**
     * Half steps between two sets of keys, each in its octave. The least way never crosses.
     *
     * @param from one to twelve pitches
     * @param to one to twelve pitches
     * @throws IllegalArgumentException if there are fewer or more pitches
     */
    public static int halfSteps(List<Pitch> from, List<Pitch> to) {
        return least(
                from.stream().mapToInt(Pitch::midiNumber).toArray(),
                to.stream().mapToInt(Pitch::midiNumber).toArray(),
                (one, other) -> Math.abs(one - other));
    }

    private static int roundTheOctave(int one, int other) {
        int up = Math.floorMod(other - one, OCTAVE);
        return Math.min(up, OCTAVE - up);
    }

    /** Goes through the fuller chord note by note; what counts is which notes of the thinner one are joined so far. */
    private static int least(int[] from, int[] to, IntBinaryOperator distance) {
        int[] full = from.length >= to.length ? from : to;
        int[] thin = full == from ? to : from;
        if (thin.length == 0 || full.length > MOST_NOTES) {
            throw new IllegalArgumentException(
                    "a chord has 1 to " + MOST_NOTES + " notes, not " + from.length + " and " + to.length);
        }
        int[] least = new int[1 << thin.length];
        Arrays.fill(least, 1, least.length, UNREACHED);
        for (int note : full) {
            least = withOneMore(least, note, thin, distance);
        }
        return least[least.length - 1];
    }

    private static int[] withOneMore(int[] least, int note, int[] thin, IntBinaryOperator distance) {
        int[] next = new int[least.length];
        Arrays.fill(next, UNREACHED);
        for (int j = 0; j < thin.length; j++) {
            int away = distance.applyAsInt(note, thin[j]);
            for (int joined = 0; joined < least.length; joined++) {
                int reached = joined | 1 << j;
                next[reached] = Math.min(next[reached], least[joined] + away);
            }
        }
        return next;
    }
}
