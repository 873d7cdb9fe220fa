package monochord.harmony.key;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/** The keys that are looked at: major and minor with signatures from eight flats to eight sharps, major first. */
final class CandidateKeys {
    private static final int FURTHEST = 8;

    static final List<Key> ALL =
            Stream.concat(majors(), majors().map(Key::relative)).toList();
    static final int COUNT = ALL.size();

    private static final int[] TONICS =
            ALL.stream().mapToInt(key -> key.tonic().fifths()).toArray();

    private CandidateKeys() {}

    private static Stream<Key> majors() {
        return IntStream.rangeClosed(-FURTHEST, FURTHEST).mapToObj(fifths -> Key.major(NoteName.at(fifths)));
    }

    /** The tonic's place on the line of fifths. */
    static int tonic(int candidate) {
        return TONICS[candidate];
    }

    static boolean isMinor(int candidate) {
        return candidate >= COUNT / 2;
    }

    static int best(double[] scores) {
        int best = 0;
        for (int candidate = 1; candidate < scores.length; candidate++) {
            if (scores[candidate] > scores[best]) {
                best = candidate;
            }
        }
        return best;
    }

    /** The likelihoods as shares that add up to 1. */
    static double[] shares(double[] scores) {
        double most = scores[best(scores)];
        double[] shares = new double[scores.length];
        double all = 0;
        for (int i = 0; i < scores.length; i++) {
            shares[i] = Math.exp(scores[i] - most);
            all += shares[i];
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= all;
        }
        return shares;
    }
}
