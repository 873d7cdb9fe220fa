package monochord.harmony.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.TriadQuality;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** What a row of chords says about its key: how long each lasts, what follows what, which begins and which ends. */
final class ChordEvidence {
    private static final int SEVENTH = 7;

    private final List<Chord> chords;
    private final List<Double> beats;
    private final List<Optional<NoteName>> sevenths;
    private final ToneShares tones = new ToneShares();
    private final ToneShares sharesOfSevenths = new ToneShares();
    /** By candidate, each worked out when it is first asked for. */
    private final int[][] seen = new int[CandidateKeys.COUNT][];

    private double time;

    private ChordEvidence(List<Chord> chords, List<Double> beats) {
        this.chords = chords;
        this.beats = beats;
        this.sevenths = chords.stream().map(ChordEvidence::seventh).toList();
        for (int i = 0; i < chords.size(); i++) {
            double length = beats.get(i);
            hear(chords.get(i), length);
            sevenths.get(i).ifPresent(seventh -> sharesOfSevenths.add(seventh, length));
        }
    }

    /** The chords as they are struck; one that is held on lasts longer. */
    static ChordEvidence of(Progression progression) {
        List<Chord> chords = new ArrayList<>();
        List<Double> beats = new ArrayList<>();
        for (Bar bar : progression.bars()) {
            double share = (double) progression.beatsPerBar() / bar.shares();
            for (ChordEvent slot : bar.slots()) {
                if (slot.held()) {
                    int last = beats.size() - 1;
                    beats.set(last, beats.get(last) + share * slot.shares());
                } else {
                    chords.add(slot.chord());
                    beats.add(share * slot.shares());
                }
            }
        }
        return new ChordEvidence(List.copyOf(chords), beats);
    }

    private void hear(Chord chord, double length) {
        time += length;
        for (Interval interval : chord.kind().intervals()) {
            tones.add(
                    chord.root().plus(interval),
                    length / chord.kind().intervals().size());
        }
    }

    private static Optional<NoteName> seventh(Chord chord) {
        return chord.kind()
                .interval(SEVENTH)
                .filter(seventh -> chord.kind().quality() != TriadQuality.DIMINISHED)
                .map(chord.root()::plus);
    }

    /** The seventh of a chord that is not diminished, where it has one. */
    Optional<NoteName> seventh(int chord) {
        return sevenths.get(chord);
    }

    /** A part of it, both ends included. */
    ChordEvidence between(int from, int to) {
        return from == 0 && to == chords.size() - 1
                ? this
                : new ChordEvidence(chords.subList(from, to + 1), beats.subList(from, to + 1));
    }

    List<Chord> chords() {
        return chords;
    }

    ToneShares tones() {
        return tones;
    }

    /** Beats that it lasts. */
    double time() {
        return time;
    }

    /** Each chord as the table numbers it. */
    int[] seenFrom(int candidate) {
        if (seen[candidate] == null) {
            int[] numbers = new int[chords.size()];
            for (int i = 0; i < numbers.length; i++) {
                Chord chord = chords.get(i);
                numbers[i] = ChordTable.chord(
                        chord.root().fifths() - CandidateKeys.tonic(candidate),
                        chord.kind().quality());
            }
            seen[candidate] = numbers;
        }
        return seen[candidate];
    }

    /** How likely each candidate is, in logarithms. */
    double[] scores(KeyCounts counts) {
        double[] scores = new double[CandidateKeys.COUNT];
        double full = Math.min(1, (double) chords.size() / KeyWeights.FULL_ROW);
        for (int candidate = 0; candidate < scores.length; candidate++) {
            scores[candidate] = full * score(candidate, counts) + named(CandidateKeys.ALL.get(candidate));
        }
        return scores;
    }

    private double named(Key key) {
        return Loop.isNamed(chords, key) ? KeyWeights.NAMED_LOOP : 0;
    }

    private double score(int candidate, KeyCounts counts) {
        boolean minor = CandidateKeys.isMinor(candidate);
        int tonic = CandidateKeys.tonic(candidate);
        int[] numbers = seenFrom(candidate);
        ChordTable table = counts.chords();
        double chordTime = 0;
        for (int i = 0; i < numbers.length; i++) {
            chordTime += beats.get(i) * table.time(minor, numbers[i]);
        }
        return KeyWeights.CHORDS * chordTime / time
                + KeyWeights.PAIRS * meanPair(numbers, minor, table)
                + KeyWeights.FIRST_CHORD * atEdge(numbers[0], KeyWeights.BEGINS_ON_TONIC, minor, table)
                + KeyWeights.LAST_CHORD * atEdge(numbers[numbers.length - 1], KeyWeights.ENDS_ON_TONIC, minor, table)
                + KeyWeights.CHORD_TONES * tones.likelihood(counts.tones(), minor, tonic)
                + KeyWeights.CHORD_SEVENTHS * sharesOfSevenths.likelihood(counts.tones(), minor, tonic)
                + table.mode(minor);
    }

    private static double meanPair(int[] seen, boolean minor, ChordTable table) {
        double sum = 0;
        int pairs = 0;
        for (int i = 1; i < seen.length; i++) {
            if (seen[i] != seen[i - 1]) {
                sum += table.next(minor, seen[i - 1], seen[i]);
                pairs++;
            }
        }
        return pairs == 0 ? 0 : sum / pairs;
    }

    /** How likely a row is to begin or end on a chord: on the tonic as often as counted, on another by its share of the rest. */
    static double atEdge(int chord, double onTonic, boolean minor, ChordTable table) {
        return chord == ChordTable.home(minor)
                ? Math.log(onTonic)
                : Math.log(1 - onTonic) + table.timeBesideHome(minor, chord);
    }
}
