package monochord.harmony.contrast;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import monochord.harmony.motion.MotionStep;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * One version of some music.
 *
 * @param chords one for each voicing, or none where the music is no chords
 * @param voicings the keys held, chord by chord, each from the bottom
 * @param line the notes of a line alone or above the chords, in order of time
 * @param lengths how long each voicing is held, then how long each note of the line
 */
public record ComparedVersion(List<Chord> chords, List<List<Pitch>> voicings, List<Pitch> line, List<Beats> lengths) {
    public ComparedVersion {
        chords = List.copyOf(chords);
        voicings = voicings.stream().map(List::copyOf).toList();
        line = List.copyOf(line);
        lengths = List.copyOf(lengths);
    }

    /** Every change of chord, in order. */
    public List<MotionStep> steps() {
        return IntStream.range(1, voicings.size())
                .filter(i -> !voicings.get(i - 1).isEmpty() && !voicings.get(i).isEmpty())
                .mapToObj(i -> MotionStep.between(voicings.get(i - 1), voicings.get(i)))
                .toList();
    }

    /** Half steps that all voices move. */
    public int moved() {
        return steps().stream().mapToInt(MotionStep::moved).sum();
    }

    /** Voices that stay on their key, counted at each change. */
    public int held() {
        return steps().stream().mapToInt(MotionStep::held).sum();
    }

    /** Pairs of voices that go the same way from fifth to fifth or octave to octave. */
    public int parallels() {
        return steps().stream().mapToInt(step -> step.parallels().size()).sum();
    }

    /** The highest key of each chord. */
    public List<Pitch> top() {
        return voicings.stream()
                .flatMap(keys -> keys.stream().max(Comparator.naturalOrder()).stream())
                .toList();
    }
}
