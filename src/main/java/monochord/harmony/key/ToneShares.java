package monochord.harmony.key;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import monochord.theory.note.NoteName;

/** How the sounding time is shared by note names, octaves apart. */
final class ToneShares {
    private final Map<Integer, Double> shares = new TreeMap<>();
    private double all;

    void add(NoteName name, double beats) {
        shares.merge(name.fifths(), beats, Double::sum);
        all += beats;
    }

    /** From 0 to 1. */
    double of(NoteName name) {
        return all == 0 ? 0 : shares.getOrDefault(name.fifths(), 0.0) / all;
    }

    boolean isEmpty() {
        return shares.isEmpty();
    }

    /** The names that sound, as places on the line of fifths, from the flat side. */
    Set<Integer> fifths() {
        return shares.keySet();
    }

    /** The mean logarithm of the likelihood of what sounds at a moment, in a mode on a tonic. */
    double likelihood(ToneProfiles profiles, boolean isMinor, int tonic) {
        double sum = 0;
        for (Map.Entry<Integer, Double> one : shares.entrySet()) {
            sum += one.getValue() * profiles.time(isMinor, one.getKey() - tonic);
        }
        return all == 0 ? 0 : sum / all;
    }
}
