package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import monochord.theory.Scale;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Holds for every two voices on ten white keys, and for a few thousand chords of up to six. */
class MotionLawsTest {
    private static final List<Pitch> KEYS = keys();

    private static List<Pitch> keys() {
        List<Pitch> keys = new ArrayList<>(Scale.parse("C major").pitches(Pitch.parse("C4")));
        keys.add(Pitch.parse("F#4"));
        keys.add(Pitch.parse("G5"));
        return keys;
    }

    private interface Law {
        void holds(List<Pitch> from, List<Pitch> to);
    }

    private static void forEveryTwoVoices(Law law) {
        int seen = 0;
        for (Pitch a : KEYS) {
            for (Pitch b : KEYS) {
                for (Pitch c : KEYS) {
                    for (Pitch d : KEYS) {
                        law.holds(List.of(a, b), List.of(c, d));
                        seen++;
                    }
                }
            }
        }
        assertEquals(10_000, seen);
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 5_000; i++) {
            law.holds(chord(random), chord(random));
        }
    }

    private static List<Pitch> chord(SplittableRandom random) {
        List<Pitch> chord = new ArrayList<>();
        for (int i = 1 + random.nextInt(6); i > 0; i--) {
            chord.add(KEYS.get(random.nextInt(KEYS.size())));
        }
        Collections.sort(chord);
        return chord;
    }

    private static List<Pitch> moved(List<Pitch> chord, Interval by) {
        return chord.stream().map(pitch -> pitch.plus(by)).toList();
    }

    private static String shape(MotionStep step) {
        return step.moves().stream().map(m -> m.voice() + ":" + m.semitones()).toList() + " "
                + step.pairs().stream()
                        .map(p -> p.motion() + "," + p.parallel() + "," + p.contrary() + "," + p.repeated())
                        .toList()
                + step.kept().size() + step.shared().size() + step.moved();
    }

    @Test
    @DisplayName("in another key everything moves alike, and the same is marked")
    void transposed() {
        List<Interval> ways =
                List.of(Interval.parse("m2"), Interval.parse("A4"), Interval.parse("-M3"), Interval.OCTAVE);
        forEveryTwoVoices((from, to) -> {
            MotionStep plain = MotionStep.between(from, to);
            String marks = marks(from, to);
            for (Interval way : ways) {
                assertEquals(shape(plain), shape(MotionStep.between(moved(from, way), moved(to, way))));
                assertEquals(marks, marks(moved(from, way), moved(to, way)));
            }
        });
    }

    private static String marks(List<Pitch> from, List<Pitch> to) {
        Passage passage = new Passage(List.of(from, to));
        return Marked.of(Strictness.CHORALE.judge(passage)) + " / " + Marked.of(Strictness.BAND.judge(passage));
    }

    @Test
    @DisplayName("backwards, each pair moves in the same way, as far, and as parallel")
    void backwards() {
        forEveryTwoVoices((from, to) -> {
            MotionStep there = MotionStep.between(from, to);
            MotionStep back = MotionStep.between(to, from);
            assertEquals(there.moved(), back.moved());
            assertEquals(there.kept().size(), back.kept().size());
            assertEquals(
                    there.pairs().stream()
                            .map(p -> p.motion() + " " + p.parallel() + p.contrary())
                            .toList(),
                    back.pairs().stream()
                            .map(p -> p.motion() + " " + p.parallel() + p.contrary())
                            .toList());
        });
    }

    @Test
    @DisplayName("two voices changing places changes no motion")
    void turnedRound() {
        forEveryTwoVoices((from, to) -> {
            if (from.size() == 2 && to.size() == 2) {
                VoicePair pair = MotionStep.between(from, to).pairs().get(0);
                VoicePair turned = VoicePair.of(pair.upper(), pair.lower());
                assertEquals(pair.motion(), turned.motion());
                assertEquals(pair.parallel(), turned.parallel());
                assertEquals(pair.contrary(), turned.contrary());
            }
        });
    }

    @Test
    @DisplayName("a pair runs in parallel, by contrary motion, or is repeated: never two of them")
    void oneOfThree() {
        int[] seen = new int[3];
        forEveryTwoVoices((from, to) -> {
            for (VoicePair pair : MotionStep.between(from, to).pairs()) {
                boolean[] is = {
                    pair.parallel() != PerfectInterval.NONE,
                    pair.contrary() != PerfectInterval.NONE,
                    pair.repeated() != PerfectInterval.NONE
                };
                int count = 0;
                for (int i = 0; i < is.length; i++) {
                    count += is[i] ? 1 : 0;
                    seen[i] += is[i] ? 1 : 0;
                }
                assertTrue(count <= 1, () -> pair.toString());
            }
        });
        for (int count : seen) {
            assertTrue(count > 50, () -> "seen only " + count);
        }
    }

    @Test
    @DisplayName("matched voices never cross, none is used twice, and all of the thinner chord go on")
    void matching() {
        forEveryTwoVoices((from, to) -> {
            MotionStep step = MotionStep.between(from, to);
            int voices = Math.min(from.size(), to.size());
            assertEquals(voices, step.moves().size());
            assertEquals(voices * (voices - 1) / 2, step.pairs().size());
            assertEquals(from.size() - voices, step.ending().size());
            assertEquals(to.size() - voices, step.entering().size());
            for (int i = 1; i < voices; i++) {
                assertTrue(step.moves().get(i - 1).voice() < step.moves().get(i).voice());
            }
        });
    }

    @Test
    @DisplayName("a chord struck again moves nothing and is marked for nothing but its crossings")
    void repeated() {
        forEveryTwoVoices((from, to) -> {
            List<Finding> found = Strictness.CHORALE.judge(new Passage(List.of(from, from)));
            assertTrue(found.stream().allMatch(f -> f.kind() == Finding.FindingKind.CROSSING));
            assertEquals(0, MotionStep.between(from, from).moved());
        });
    }
}
