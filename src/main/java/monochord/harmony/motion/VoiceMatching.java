package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.Pitch;

/**
 * Which voice of one chord goes on as which of the next.
 *
 * <p>Chords of as many voices are matched voice by voice. Otherwise each voice of the thinner chord goes on as one of the
 * fuller, no two as the same and none across another, in the way that moves least in all; where two ways move as little,
 * the upper voice goes on. Voices that are left over enter or fall silent, and make no pairs. Our own rule.
 */
final class VoiceMatching {
    private static final int UNREACHED = 1_000_000;

    private VoiceMatching() {}

    static List<VoiceMove> of(List<Pitch> from, List<Pitch> to) {
        if (from.size() == to.size()) {
            return voiceByVoice(from, to);
        }
        boolean thinner = from.size() < to.size();
        List<Pitch> thin = thinner ? from : to;
        List<Pitch> full = thinner ? to : from;
        int[] chosen = chosen(thin, full);
        List<VoiceMove> moves = new ArrayList<>(thin.size());
        for (int i = 0; i < chosen.length; i++) {
            Pitch one = thin.get(i);
            Pitch other = full.get(chosen[i]);
            moves.add(thinner ? new VoiceMove(chosen[i], one, other) : new VoiceMove(chosen[i], other, one));
        }
        return moves;
    }

    private static List<VoiceMove> voiceByVoice(List<Pitch> from, List<Pitch> to) {
        List<VoiceMove> moves = new ArrayList<>(from.size());
        for (int i = 0; i < from.size(); i++) {
            moves.add(new VoiceMove(i, from.get(i), to.get(i)));
        }
        return moves;
    }

    /** For each voice of the thinner chord, the number of its partner. */
    private static int[] chosen(List<Pitch> thin, List<Pitch> full) {
        int[][] least = least(thin, full);
        int[] chosen = new int[thin.size()];
        int j = full.size();
        for (int i = thin.size(); i > 0; i--) {
            while (least[i][j] != least[i - 1][j - 1] + distance(thin.get(i - 1), full.get(j - 1))) {
                j--;
            }
            chosen[i - 1] = --j;
        }
        return chosen;
    }

    /** The least movement with which the first i voices of the thinner chord find partners among the first j. */
    private static int[][] least(List<Pitch> thin, List<Pitch> full) {
        int[][] least = new int[thin.size() + 1][full.size() + 1];
        for (int i = 1; i <= thin.size(); i++) {
            for (int j = 0; j <= full.size(); j++) {
                least[i][j] = j < i
                        ? UNREACHED
                        : Math.min(least[i][j - 1], least[i - 1][j - 1] + distance(thin.get(i - 1), full.get(j - 1)));
            }
        }
        return least;
    }

    private static int distance(Pitch one, Pitch other) {
        return Math.abs(one.midiNumber() - other.midiNumber());
    }
}
