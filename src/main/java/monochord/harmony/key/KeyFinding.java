package monochord.harmony.key;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * The key of a tune, of chords, or of both.
 *
 * @param keys the likeliest first; at least two, and every other that has a share worth naming
 * @param spans where chords stand in which key, in order and without gaps; none for a tune alone
 * @param ofTune where a tune alone stands in which key, in the same way; none where there are chords
 * @param loop if the chords go round
 */
public record KeyFinding(List<LikelyKey> keys, List<KeySpan> spans, List<TuneKeySpan> ofTune, Optional<Loop> loop) {
    private static final int FEWEST = 2;
    private static final int MOST = 4;
    private static final double WORTH_NAMING = 0.05;

    public KeyFinding {
        keys = List.copyOf(keys);
        spans = List.copyOf(spans);
        ofTune = List.copyOf(ofTune);
    }

    public static KeyFinding of(Melody tune, KeyCounts counts) {
        return of(Optional.of(tune), Optional.empty(), counts);
    }

    public static KeyFinding of(Progression chords, KeyCounts counts) {
        return of(Optional.empty(), Optional.of(chords), counts);
    }

    /** @throws IllegalArgumentException if there is neither a tune nor a chord */
    public static KeyFinding of(Optional<Melody> melody, Optional<Progression> progression, KeyCounts counts) {
        Optional<TuneEvidence> tune = melody.map(Melody::notes).map(TuneEvidence::new);
        Optional<ChordEvidence> row = progression.map(ChordEvidence::of);
        if (tune.isEmpty() && row.isEmpty()) {
            throw new IllegalArgumentException("a key is found from a tune or from chords");
        }
        List<KeySpan> found = row.map(chords -> KeySpans.of(chords, counts)).orElse(List.of());
        List<TuneKeySpan> ofTune = row.isPresent() ? List.of() : TuneKeySpans.of(melody.get(), counts.tones());
        double[] shares = ofTune.size() > 1
                ? shares(melody.get().notes(), ofTune, counts)
                : shares(tune, row, told(found), counts);
        List<LikelyKey> keys = IntStream.range(0, shares.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> shares[i]).reversed())
                .limit(MOST)
                .filter(i -> shares[i] >= WORTH_NAMING || isAmong(i, shares, FEWEST))
                .map(i -> likely(CandidateKeys.ALL.get(i), shares[i], tune, row))
                .toList();
        Key best = CandidateKeys.ALL.get(CandidateKeys.best(shares));
        List<KeySpan> spans = found.size() == 1
                ? List.of(new KeySpan(0, found.get(0).to(), keys.get(0).key(), Optional.empty()))
                : found;
        Optional<Loop> loop = spans.size() == 1
                ? Loop.of(row.get().chords(), progression.get().bars().size(), best)
                : Optional.empty();
        return new KeyFinding(
                keys, spans, ofTune.size() == 1 ? List.of(ofTune.get(0).in(best)) : ofTune, loop);
    }

    private static boolean isAmong(int candidate, double[] shares, int places) {
        return IntStream.range(0, shares.length)
                        .filter(i -> shares[i] > shares[candidate])
                        .count()
                < places;
    }

    /** Spans of relative keys are told together: which of them the whole is in, first and last chord say best. */
    private static List<KeySpan> told(List<KeySpan> found) {
        boolean isOne =
                found.stream().map(span -> span.key().signature()).distinct().count() == 1;
        return isOne
                ? List.of(new KeySpan(
                        0, found.get(found.size() - 1).to(), found.get(0).key(), Optional.empty()))
                : found;
    }

    /** Where chords change key, each span speaks for its own, as loud as it lasts. */
    private static double[] shares(
            Optional<TuneEvidence> tune, Optional<ChordEvidence> row, List<KeySpan> spans, KeyCounts counts) {
        double[] all = new double[CandidateKeys.COUNT];
        double[] ofTune = tune.map(notes -> notes.scores(counts.tones())).orElse(new double[CandidateKeys.COUNT]);
        if (row.isEmpty()) {
            return CandidateKeys.shares(ofTune);
        }
        for (KeySpan span : spans) {
            ChordEvidence part = row.get().between(span.from(), span.to());
            double[] scores = part.scores(counts);
            for (int i = 0; i < scores.length; i++) {
                scores[i] += spans.size() == 1 ? ofTune[i] : 0;
            }
            double[] shares = CandidateKeys.shares(scores);
            for (int i = 0; i < shares.length; i++) {
                all[i] += shares[i] * part.time() / row.get().time();
            }
        }
        return all;
    }

    /** Of a tune alone that changes key, in the same way. */
    private static double[] shares(List<MelodyNote> notes, List<TuneKeySpan> spans, KeyCounts counts) {
        double[] all = new double[CandidateKeys.COUNT];
        double time = new TuneEvidence(notes).tones().all();
        for (TuneKeySpan span : spans) {
            TuneEvidence part = new TuneEvidence(notes.subList(span.from(), span.to() + 1));
            double[] shares = CandidateKeys.shares(part.scores(counts.tones()));
            for (int i = 0; i < shares.length; i++) {
                all[i] += shares[i] * part.tones().all() / time;
            }
        }
        return all;
    }

    private static LikelyKey likely(Key key, double share, Optional<TuneEvidence> tune, Optional<ChordEvidence> row) {
        List<Phrase> why = new ArrayList<>();
        Optional<ModeOfTune> mode = tune.flatMap(notes -> ModeOfTune.in(key, notes.tones(), sounding(notes, row)));
        Key named = mode.map(other -> key.parallel(other.mode())).orElse(key);
        row.ifPresent(chords -> why.addAll(ChordReasons.of(chords, named)));
        tune.ifPresent(notes -> why.addAll(TuneReasons.of(notes, named)));
        mode.ifPresent(other -> why.add(other.why(key)));
        return new LikelyKey(named, share, why);
    }

    private static Set<Integer> sounding(TuneEvidence tune, Optional<ChordEvidence> row) {
        Set<Integer> sounding = new HashSet<>(tune.tones().fifths());
        row.ifPresent(chords -> sounding.addAll(chords.tones().fifths()));
        return sounding;
    }

    /** The likeliest key. */
    public Key key() {
        return keys.get(0).key();
    }
}
