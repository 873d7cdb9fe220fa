package monochord.harmony.key;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.melody.Melody;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Beats;

/**
 * Where a tune without chords changes key: of all ways to give each bar a key the likeliest, by dynamic programming. A bar is
 * as likely as tunes of that mode have its notes; another key has its price. Linear in the number of bars.
 */
final class TuneKeySpans {
    private static final Beats BAR = Beats.of(4);
    private static final int DEGREES = 7;
    private static final List<ChordKind> TRIADS = List.of(ChordKind.MAJOR, ChordKind.MINOR);

    private final List<MelodyNote> notes;
    private final List<NumberedBar> bars = new ArrayList<>();
    private final boolean isBarred;
    /** The name of each note, as its place on the line of fifths, and what the note counts. */
    private final int[] places;

    private final double[] weights;
    private final double[][] worth;

    /** The notes that begin in a bar, from the first to the one behind the last. */
    private record NumberedBar(int number, int first, int end) {}

    private TuneKeySpans(Melody melody, ToneProfiles profiles) {
        this.notes = melody.notes();
        this.isBarred = melody.bar().isPresent();
        this.places =
                notes.stream().mapToInt(note -> note.pitch().name().fifths()).toArray();
        double meanBeats = notes.stream().mapToDouble(TuneKeySpans::beats).sum() / notes.size();
        this.weights = notes.stream()
                .mapToDouble(note -> KeyWeights.TUNE_NOTE * beats(note) / meanBeats)
                .toArray();
        cut(melody);
        this.worth = new double[bars.size()][CandidateKeys.COUNT];
        for (int bar = 0; bar < worth.length; bar++) {
            for (int candidate = 0; candidate < CandidateKeys.COUNT; candidate++) {
                worth[bar][candidate] = worth(bars.get(bar), candidate, profiles);
            }
        }
    }

    /** One span or more, without gaps. */
    static List<TuneKeySpan> of(Melody melody, ToneProfiles profiles) {
        TuneKeySpans spans = new TuneKeySpans(melody, profiles);
        return spans.spans(spans.likeliest());
    }

    private static double beats(MelodyNote note) {
        return (double) note.beats().numerator() / note.beats().denominator();
    }

    /** Bars without a note are passed over. */
    private void cut(Melody melody) {
        Beats length = melody.bar().orElse(BAR);
        Beats end = melody.pickup().isZero() ? length : melody.pickup();
        int number = melody.pickup().isZero() ? 1 : 0;
        int first = 0;
        for (int i = 0; i <= notes.size(); i++) {
            boolean isOver = i == notes.size() || notes.get(i).start().compareTo(end) >= 0;
            if (isOver && i > first) {
                bars.add(new NumberedBar(number, first, i));
                first = i;
            }
            while (i < notes.size() && notes.get(i).start().compareTo(end) >= 0) {
                end = end.plus(length);
                number++;
            }
        }
    }

    private double worth(NumberedBar bar, int candidate, ToneProfiles profiles) {
        boolean minor = CandidateKeys.isMinor(candidate);
        int tonic = CandidateKeys.tonic(candidate);
        double worth = 0;
        for (int note = bar.first(); note < bar.end(); note++) {
            worth += weights[note] * profiles.time(minor, places[note] - tonic);
        }
        return worth
                + (bar.first() == 0 ? profiles.mode(minor) + edge(0, tonic, minor, profiles) : 0)
                + (bar.end() == notes.size() ? edge(notes.size() - 1, tonic, minor, profiles) : 0);
    }

    private double edge(int at, int tonic, boolean minor, ToneProfiles profiles) {
        int degree = places[at] - tonic;
        return at == 0
                ? KeyWeights.FIRST_NOTE * profiles.first(minor, degree)
                : KeyWeights.LAST_NOTE * profiles.last(minor, degree);
    }

    /** The candidate of each bar. */
    private int[] likeliest() {
        int[][] before = new int[worth.length][CandidateKeys.COUNT];
        double[] scores = worth[0].clone();
        for (int bar = 1; bar < worth.length; bar++) {
            scores = step(scores, bar, before[bar]);
        }
        int[] keys = new int[worth.length];
        keys[keys.length - 1] = CandidateKeys.best(scores);
        for (int bar = keys.length - 1; bar > 0; bar--) {
            keys[bar - 1] = before[bar][keys[bar]];
        }
        return keys;
    }

    private double[] step(double[] scores, int bar, int[] before) {
        int best = CandidateKeys.best(scores);
        double[] next = new double[scores.length];
        for (int candidate = 0; candidate < next.length; candidate++) {
            double change = scores[best] - KeyWeights.TUNE_CHANGE;
            before[candidate] = scores[candidate] >= change ? candidate : best;
            next[candidate] = Math.max(scores[candidate], change) + worth[bar][candidate];
        }
        return next;
    }

    private List<TuneKeySpan> spans(int[] keys) {
        List<TuneKeySpan> spans = new ArrayList<>();
        int from = 0;
        for (int bar = 1; bar <= keys.length; bar++) {
            if (bar == keys.length || keys[bar] != keys[from]) {
                Key key = CandidateKeys.ALL.get(keys[from]);
                Optional<Chord> pivot = spans.isEmpty()
                        ? Optional.empty()
                        : pivot(bars.get(from - 1), spans.get(spans.size() - 1).key(), key);
                spans.add(span(bars.get(from), bars.get(bar - 1), key, pivot));
                from = bar;
            }
        }
        return spans;
    }

    private TuneKeySpan span(NumberedBar first, NumberedBar last, Key key, Optional<Chord> pivot) {
        Optional<TuneKeySpan.Bars> written =
                isBarred ? Optional.of(new TuneKeySpan.Bars(first.number(), last.number())) : Optional.empty();
        return new TuneKeySpan(first.first(), last.end() - 1, written, key, pivot);
    }

    /** Of the plain chords of both keys the one that holds most of the bar before the new key; none that holds less than half. */
    private Optional<Chord> pivot(NumberedBar bar, Key before, Key key) {
        double all = held(bar, null);
        return IntStream.rangeClosed(1, DEGREES)
                .mapToObj(before::note)
                .flatMap(root -> TRIADS.stream().map(kind -> new Chord(root, kind)))
                .filter(chord -> before.isOwn(chord) && key.isOwn(chord))
                .max(Comparator.comparingDouble(chord -> held(bar, chord)))
                .filter(chord -> held(bar, chord) >= all / 2);
    }

    private double held(NumberedBar bar, Chord chord) {
        return notes.subList(bar.first(), bar.end()).stream()
                .filter(note -> chord == null || chord.holds(note.pitch().name()))
                .mapToDouble(TuneKeySpans::beats)
                .sum();
    }
}
