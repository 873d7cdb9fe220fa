package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.motion.VoiceLeading;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;

/**
 * Laws of the right hand over all pairs of chords in 15 keys' worth of roots, C flat to C sharp, against a search that
 * tries every placement of every tone.
 *
 * <p>Source: one octave as the span that is safe to ask of a hand, from Boyle, Boyle and Booker, Pianist hand spans,
 * 2015; the rest common practice, no source.
 */
class RightHandLawsTest {
    private static final int G3 = 55;
    private static final int E5 = 76;
    private static final int OCTAVE = 12;
    private static final List<String> QUALITIES = List.of(
            "M3 P5", "m3 P5", "m3 d5", "M3 A5", "P4 P5", "M3 P5 M7", "M3 P5 m7", "m3 P5 m7", "m3 d5 m7", "m3 d5 d7");

    private static final List<HeldChord> CHORDS = QUALITIES.stream()
            .flatMap(quality -> IntStream.rangeClosed(-7, 7).mapToObj(fifths -> chord(NoteName.at(fifths), quality)))
            .toList();

    private static HeldChord chord(NoteName root, String quality) {
        Stream<NoteName> above =
                Arrays.stream(quality.split(" ")).map(Interval::parse).map(root::plus);
        return new HeldChord(root, Stream.concat(Stream.of(root), above).toList(), Beats.ONE, "");
    }

    @Test
    void thereAre150ChordsToTry() {
        assertEquals(150, CHORDS.size());
    }

    @Test
    void everyToneIsPlayedOnceWithinAnOctaveBetweenG3AndE5() {
        for (HeldChord first : CHORDS) {
            for (HeldChord second : CHORDS) {
                List<Pitch> keys = RightHand.follow(List.of(first, second)).get(1);
                int[] notes = notes(keys);
                assertEquals(second.tones().size(), notes.length);
                assertEquals(
                        new HashSet<>(second.tones()),
                        new HashSet<>(keys.stream().map(Pitch::name).toList()));
                assertTrue(notes[notes.length - 1] - notes[0] <= OCTAVE, keys::toString);
                assertTrue(notes[0] >= G3 && notes[notes.length - 1] <= E5, keys::toString);
            }
        }
    }

    @Test
    void noPlacementOfTheTonesIsNearer() {
        for (HeldChord first : CHORDS) {
            int[] from = notes(RightHand.follow(List.of(first)).get(0));
            for (HeldChord second : CHORDS) {
                List<List<Pitch>> both = RightHand.follow(List.of(first, second));
                int moved = VoiceLeading.halfSteps(both.get(0), both.get(1));
                assertEquals(nearest(from, second), moved, () -> both.toString());
            }
        }
    }

    @Test
    void theWayBackIsAsLongAsTheWayThere() {
        for (HeldChord first : CHORDS) {
            for (HeldChord second : CHORDS.subList(0, 30)) {
                List<List<Pitch>> both = RightHand.follow(List.of(first, second));
                assertEquals(
                        VoiceLeading.halfSteps(both.get(0), both.get(1)),
                        VoiceLeading.halfSteps(both.get(1), both.get(0)));
            }
        }
    }

    private static int[] notes(List<Pitch> keys) {
        return keys.stream().mapToInt(Pitch::midiNumber).toArray();
    }

    private static int nearest(int[] from, HeldChord to) {
        int[] classes = to.tones().stream().mapToInt(NoteName::pitchClass).toArray();
        return placements(classes, 0, new int[classes.length])
                .filter(keys -> keys[keys.length - 1] - keys[0] <= OCTAVE)
                .mapToInt(keys -> from.length >= keys.length ? joined(from, keys, 0, 0) : joined(keys, from, 0, 0))
                .min()
                .orElseThrow();
    }

    private static Stream<int[]> placements(int[] classes, int done, int[] keys) {
        if (done == classes.length) {
            return Stream.of(Arrays.stream(keys).sorted().toArray());
        }
        return IntStream.rangeClosed(G3, E5)
                .filter(key -> key % OCTAVE == classes[done])
                .boxed()
                .flatMap(key -> {
                    int[] more = keys.clone();
                    more[done] = key;
                    return placements(classes, done + 1, more);
                });
    }

    /**
     * Least movement when full[i…] is joined to thin[j…], each key of the fuller to one of the thinner, none crossing.
     */
    private static int joined(int[] full, int[] thin, int i, int j) {
        int here = Math.abs(full[i] - thin[j]);
        if (i == full.length - 1) {
            return j == thin.length - 1 ? here : 1000;
        }
        int stay = joined(full, thin, i + 1, j);
        return here + (j == thin.length - 1 ? stay : Math.min(stay, joined(full, thin, i + 1, j + 1)));
    }
}
