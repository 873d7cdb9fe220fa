package monochord.harmony.key;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import monochord.harmony.after.SongCounts;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Which chords come in songs, and which after which: as logarithms of likelihoods. Chords are told apart by their root,
 * seen from the tonic, and their triad; a suspended or open chord counts as the major one on its root. {@link #chord}
 * numbers them.
 *
 * <p>For each mode the collection with the most songs is taken. What never came has a small likelihood: half a count is
 * added to each chord, and twenty by the chord's own share to each row of what comes next.
 */
public final class ChordTable {
    private static final int REACH = 16;
    private static final int KINDS = 4;
    private static final int SIZE = (2 * REACH + 1) * KINDS;
    private static final double COUNT_ADDED = 0.5;
    private static final double NEXT_ADDED = 20;

    private final Songs major;
    private final Songs minor;
    private final double likelihoodOfMajor;
    private final double likelihoodOfMinor;

    /** @param rest the logarithm of the share of all chords but the tonic */
    private record Songs(double[] chords, double[][] next, double rest) {
        static Songs of(List<SongCounts.SongCount> rows, boolean isMinor) {
            double[] arrived = new double[SIZE];
            double[] left = new double[SIZE];
            double[][] pairs = new double[SIZE][SIZE];
            for (SongCounts.SongCount row : rows) {
                Optional<Integer> from = named(row.from());
                Optional<Integer> to = named(row.to());
                if (from.isPresent() && to.isPresent()) {
                    arrived[to.get()] += row.times();
                    left[from.get()] += row.times();
                    pairs[from.get()][to.get()] += row.times();
                }
            }
            double[] share = shares(arrived);
            double[] logs = Arrays.stream(share).map(Math::log).toArray();
            return new Songs(logs, next(pairs, left, share), Math.log(1 - share[home(isMinor)]));
        }

        private static double[][] next(double[][] pairs, double[] left, double[] share) {
            double[][] next = new double[SIZE][SIZE];
            for (int from = 0; from < SIZE; from++) {
                for (int to = 0; to < SIZE; to++) {
                    next[from][to] = Math.log((pairs[from][to] + NEXT_ADDED * share[to]) / (left[from] + NEXT_ADDED));
                }
            }
            return next;
        }

        private static double[] shares(double[] counts) {
            double all = 0;
            for (double count : counts) {
                all += count + COUNT_ADDED;
            }
            double[] shares = new double[SIZE];
            for (int i = 0; i < SIZE; i++) {
                shares[i] = (counts[i] + COUNT_ADDED) / all;
            }
            return shares;
        }
    }

    private ChordTable(Songs major, Songs minor, double shareOfMinor) {
        this.major = major;
        this.minor = minor;
        this.likelihoodOfMajor = Math.log(1 - shareOfMinor);
        this.likelihoodOfMinor = Math.log(shareOfMinor);
    }

    public static ChordTable of(SongCounts counts) {
        return new ChordTable(
                Songs.of(largest(counts, false), false),
                Songs.of(largest(counts, true), true),
                shareOfMinor(counts.rows()));
    }

    private static List<SongCounts.SongCount> largest(SongCounts counts, boolean minor) {
        List<SongCounts.SongCount> rows =
                counts.rows().stream().filter(row -> row.minor() == minor).toList();
        Optional<SongCounts.SongCount> most = rows.stream().max(Comparator.comparingInt(SongCounts.SongCount::sample));
        return rows.stream()
                .filter(row -> row.collection() == most.get().collection())
                .toList();
    }

    /** From a collection that sorts its songs by mode. */
    private static double shareOfMinor(List<SongCounts.SongCount> rows) {
        SongCounts.SongCount inMinor =
                rows.stream().filter(SongCounts.SongCount::minor).findFirst().orElseThrow();
        int inMajor = rows.stream()
                .filter(row -> !row.minor() && row.collection() == inMinor.collection())
                .mapToInt(SongCounts.SongCount::sample)
                .findFirst()
                .orElseThrow();
        return (double) inMinor.sample() / (inMinor.sample() + inMajor);
    }

    /** The number of a chord as the counts name it, by the degrees of the major scale; none for one without a name. */
    private static Optional<Integer> named(String numeral) {
        try {
            Chord chord = Numeral.parse(numeral).in(Key.major(NoteName.C));
            return Optional.of(chord(chord, NoteName.C));
        } catch (Unreadable unnamed) {
            return Optional.empty();
        }
    }

    /** The number of a chord seen from a tonic. */
    public static int chord(Chord chord, NoteName tonic) {
        return chord(chord.root().fifths() - tonic.fifths(), chord.kind().quality());
    }

    static int chord(int fifths, TriadQuality quality) {
        int kind = switch (quality) {
            case MINOR -> 1;
            case DIMINISHED -> 2;
            case AUGMENTED -> 3;
            case MAJOR, SUSPENDED, OPEN -> 0;
        };
        return (Math.max(-REACH, Math.min(REACH, fifths)) + REACH) * KINDS + kind;
    }

    /** The number of the tonic chord. */
    static int home(boolean isMinor) {
        return chord(0, isMinor ? TriadQuality.MINOR : TriadQuality.MAJOR);
    }

    /** How likely a chord that is not the tonic is to be this one. */
    double timeBesideHome(boolean isMinor, int chord) {
        return time(isMinor, chord) - of(isMinor).rest();
    }

    private Songs of(boolean isMinor) {
        return isMinor ? minor : major;
    }

    /** How likely a chord of a song is to be this one. */
    public double time(boolean isMinor, int chord) {
        return of(isMinor).chords()[chord];
    }

    /** How likely the next chord, which is another, is to be this one. */
    public double next(boolean isMinor, int from, int to) {
        return of(isMinor).next()[from][to];
    }

    /** How likely a song is to be of that mode. */
    double mode(boolean isMinor) {
        return isMinor ? likelihoodOfMinor : likelihoodOfMajor;
    }
}
