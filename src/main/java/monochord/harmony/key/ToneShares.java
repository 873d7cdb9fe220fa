package monochord.harmony.key;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import monochord.theory.note.NoteName;

/** How the sounding time is shared by note names, octaves apart. */
final class ToneShares {
    private static final int START = 8;

    /** The places that sound, in the order in which they came, and the beats of each. */
    private int[] places = new int[START];

    private double[] beats = new double[START];
    private int size;
    private double all;

    void add(NoteName name, double length) {
        int at = find(name.fifths());
        if (at == size) {
            if (size == places.length) {
                places = Arrays.copyOf(places, 2 * size);
                beats = Arrays.copyOf(beats, 2 * size);
            }
            places[size++] = name.fifths();
        }
        beats[at] += length;
        all += length;
    }

    /** Where a place stands, or the size if it does not sound. */
    private int find(int fifths) {
        int at = 0;
        while (at < size && places[at] != fifths) {
            at++;
        }
        return at;
    }

    /** Beats in all. */
    double all() {
        return all;
    }

    /** From 0 to 1. */
    double of(NoteName name) {
        int at = find(name.fifths());
        return at == size ? 0 : beats[at] / all;
    }

    /** The names that sound, as places on the line of fifths, from the flat side. */
    Set<Integer> fifths() {
        Set<Integer> fifths = new TreeSet<>();
        for (int i = 0; i < size; i++) {
            fifths.add(places[i]);
        }
        return fifths;
    }

    /** The mean logarithm of the likelihood of what sounds at a moment, in a mode on a tonic. */
    double likelihood(ToneProfiles profiles, boolean isMinor, int tonic) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += beats[i] * profiles.time(isMinor, places[i] - tonic);
        }
        return all == 0 ? 0 : sum / all;
    }
}
