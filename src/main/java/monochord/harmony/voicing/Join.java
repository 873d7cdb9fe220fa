package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.Pitch;

/** One voice on its way from a chord to the next. */
record Join(Pitch from, Pitch to) {
    int halfSteps() {
        return to.midiNumber() - from.midiNumber();
    }

    /**
     * Joins keys bottom to top: one to one where both chords have as many, else each of the fuller to one of the thinner,
     * none left out and no two crossing, in the way that moves least.
     */
    static List<Join> of(List<Pitch> from, List<Pitch> to) {
        boolean thins = from.size() > to.size();
        List<Pitch> full = thins ? from : to;
        List<Pitch> thin = thins ? to : from;
        int[] partners = partners(full, thin);
        List<Join> joins = new ArrayList<>();
        for (int i = 0; i < partners.length; i++) {
            Pitch partner = thin.get(partners[i]);
            joins.add(thins ? new Join(full.get(i), partner) : new Join(partner, full.get(i)));
        }
        return joins;
    }

    private static int[] partners(List<Pitch> full, List<Pitch> thin) {
        int[][] least = new int[full.size()][thin.size()];
        for (int i = 0; i < full.size(); i++) {
            for (int j = 0; j < thin.size(); j++) {
                least[i][j] = before(least, i, j) + distance(full.get(i), thin.get(j));
            }
        }
        int[] partners = new int[full.size()];
        int j = thin.size() - 1;
        for (int i = full.size() - 1; i >= 0; i--) {
            partners[i] = j;
            boolean goesDown = i > 0 && j > 0 && least[i - 1][j - 1] < least[i - 1][j];
            j -= goesDown || i == j ? 1 : 0;
        }
        return partners;
    }

    private static int before(int[][] least, int i, int j) {
        if (i == 0) {
            return j == 0 ? 0 : UNREACHED;
        }
        return j == 0 ? least[i - 1][0] : Math.min(least[i - 1][j], least[i - 1][j - 1]);
    }

    private static final int UNREACHED = 1_000_000;

    private static int distance(Pitch a, Pitch b) {
        return Math.abs(a.midiNumber() - b.midiNumber());
    }
}
