package monochord.harmony.voicing;

import java.util.List;
import monochord.harmony.motion.MotionStep;
import monochord.harmony.motion.VoicePair;

/**
 * What moves and what stays in a row of voicings, counted and not weighed, voice by voice as {@link MotionStep} joins them.
 *
 * @param moved half steps of all voices
 * @param parallels pairs of voices that go the same way from octave or unison to octave, or from fifth to fifth
 * @param held voices that stay on their key, counted at each change
 * @param inLeftHand how many of the parallels lie between two voices of the left hand
 */
public record MovementCount(int moved, int parallels, int held, int inLeftHand) {
    private static final MovementCount NOTHING = new MovementCount(0, 0, 0, 0);

    static MovementCount of(List<Voicing> voicings) {
        MovementCount sum = NOTHING;
        for (int i = 1; i < voicings.size(); i++) {
            sum = sum.plus(between(voicings.get(i - 1), voicings.get(i)));
        }
        return sum;
    }

    static MovementCount between(Voicing from, Voicing to) {
        MotionStep step = MotionStep.between(from.pitches(), to.pitches());
        int left = Math.min(from.left().size(), to.left().size());
        List<VoicePair> parallels = step.parallels();
        int inLeftHand = (int)
                parallels.stream().filter(pair -> pair.upper().voice() < left).count();
        return new MovementCount(step.moved(), parallels.size(), step.held(), inLeftHand);
    }

    private MovementCount plus(MovementCount other) {
        return new MovementCount(
                moved + other.moved, parallels + other.parallels, held + other.held, inLeftHand + other.inLeftHand);
    }
}
