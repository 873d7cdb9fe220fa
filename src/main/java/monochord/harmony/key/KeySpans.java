package monochord.harmony.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/**
 * Where a row of chords changes key: of all ways to give each chord a key the likeliest, by dynamic programming. Each chord
 * is as likely as songs have it after the one before it; another key has its price. Linear in the number of chords.
 */
final class KeySpans {
    private final ChordEvidence row;
    private final ChordTable table;
    private final ToneProfiles tones;
    private final int[][] seen = new int[CandidateKeys.COUNT][];

    KeySpans(ChordEvidence row, KeyCounts counts) {
        this.row = row;
        this.table = counts.chords();
        this.tones = counts.tones();
        for (int candidate = 0; candidate < seen.length; candidate++) {
            seen[candidate] = row.seenFrom(candidate);
        }
    }

    /** One span or more, without gaps; as long as one is too short to be a key, a change has a higher price. */
    static List<KeySpan> of(ChordEvidence row, KeyCounts counts) {
        KeySpans spans = new KeySpans(row, counts);
        double price = KeyWeights.CHANGE;
        List<KeySpan> found = spans.cut(spans.likeliest(price));
        while (found.size() > 1
                && found.stream().anyMatch(span -> span.to() - span.from() + 1 < KeyWeights.FEWEST_CHORDS)) {
            price *= 2;
            found = spans.cut(spans.likeliest(price));
        }
        return found;
    }

    /** The candidate of each chord. */
    int[] likeliest(double price) {
        int length = row.chords().size();
        int[][] before = new int[length][CandidateKeys.COUNT];
        double[] scores = new double[CandidateKeys.COUNT];
        for (int candidate = 0; candidate < scores.length; candidate++) {
            scores[candidate] = table.mode(CandidateKeys.isMinor(candidate))
                    + edge(candidate, 0, KeyWeights.BEGINS_ON_TONIC)
                    + seventh(candidate, 0);
        }
        for (int i = 1; i < length; i++) {
            scores = step(scores, i, before[i], price);
        }
        for (int candidate = 0; candidate < scores.length; candidate++) {
            scores[candidate] += edge(candidate, length - 1, KeyWeights.ENDS_ON_TONIC) - first(candidate, length - 1);
        }
        int[] keys = new int[length];
        keys[length - 1] = CandidateKeys.best(scores);
        for (int i = length - 1; i > 0; i--) {
            keys[i - 1] = before[i][keys[i]];
        }
        return keys;
    }

    private double[] step(double[] scores, int i, int[] before, double price) {
        int best = CandidateKeys.best(scores);
        double[] next = new double[scores.length];
        for (int candidate = 0; candidate < next.length; candidate++) {
            double seventh = seventh(candidate, i);
            double stay = scores[candidate] + following(candidate, i) + seventh;
            double change = scores[best] - price + first(candidate, i) + seventh;
            before[candidate] = stay >= change ? candidate : best;
            next[candidate] = Math.max(stay, change);
        }
        return next;
    }

    /** How likely a tune in that key is to sound the seventh of a chord, where it has one. */
    double seventh(int candidate, int i) {
        Optional<NoteName> seventh = row.seventh(i);
        return seventh.isEmpty()
                ? 0
                : KeyWeights.SPAN_SEVENTHS
                        * tones.time(
                                CandidateKeys.isMinor(candidate),
                                seventh.get().fifths() - CandidateKeys.tonic(candidate));
    }

    private double edge(int candidate, int i, double onTonic) {
        return ChordEvidence.atEdge(seen[candidate][i], onTonic, CandidateKeys.isMinor(candidate), table);
    }

    private double first(int candidate, int i) {
        return table.time(CandidateKeys.isMinor(candidate), seen[candidate][i]);
    }

    private double following(int candidate, int i) {
        int[] chords = seen[candidate];
        return chords[i] == chords[i - 1] ? 0 : table.next(CandidateKeys.isMinor(candidate), chords[i - 1], chords[i]);
    }

    private List<KeySpan> cut(int[] keys) {
        List<KeySpan> spans = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= keys.length; i++) {
            if (i == keys.length || keys[i] != keys[from]) {
                spans.add(span(from, i - 1, CandidateKeys.ALL.get(keys[from]), spans));
                from = i;
            }
        }
        return spans;
    }

    /**
     * A new key begins behind the chord that it shares with the one before, if there is one: the pivot. That is the chord
     * before its first one, or one of the first two, if the next is from outside the key before.
     */
    private KeySpan span(int from, int to, Key key, List<KeySpan> before) {
        if (before.isEmpty()) {
            return new KeySpan(from, to, key, Optional.empty());
        }
        KeySpan last = before.get(before.size() - 1);
        int first = from;
        while (first < Math.min(to, from + 2) && isPivot(first, last.key(), key)) {
            first++;
        }
        if (first == from || last.key().isOwn(row.chords().get(first))) {
            Optional<Chord> pivot =
                    Optional.of(row.chords().get(from - 1)).filter(chord -> isPivot(from - 1, last.key(), key));
            return new KeySpan(from, to, key, pivot);
        }
        before.set(before.size() - 1, new KeySpan(last.from(), first - 1, last.key(), last.pivot()));
        return new KeySpan(first, to, key, Optional.of(row.chords().get(first - 1)));
    }

    private boolean isPivot(int i, Key before, Key key) {
        Chord chord = row.chords().get(i);
        return before.isOwn(chord) && key.isOwn(chord);
    }
}
