package monochord.harmony.key;

import java.util.List;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;

/** What a tune says about its key: how long each note name sounds, which begins and which ends. */
final class TuneEvidence {
    private final List<MelodyNote> notes;
    private final ToneShares tones = new ToneShares();

    TuneEvidence(List<MelodyNote> notes) {
        this.notes = notes;
        notes.forEach(note -> tones.add(note.pitch().name(), number(note.beats())));
    }

    private static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }

    ToneShares tones() {
        return tones;
    }

    NoteName first() {
        return notes.get(0).pitch().name();
    }

    NoteName last() {
        return notes.get(notes.size() - 1).pitch().name();
    }

    List<MelodyNote> notes() {
        return notes;
    }

    /** How likely each candidate is, in logarithms. */
    double[] scores(ToneProfiles profiles) {
        double[] scores = new double[CandidateKeys.COUNT];
        double full = Math.min(1, (double) notes.size() / KeyWeights.FULL_TUNE);
        for (int candidate = 0; candidate < scores.length; candidate++) {
            scores[candidate] = full * score(candidate, profiles);
        }
        return scores;
    }

    private double score(int candidate, ToneProfiles profiles) {
        boolean minor = CandidateKeys.isMinor(candidate);
        int tonic = CandidateKeys.tonic(candidate);
        return KeyWeights.TIME * tones.likelihood(profiles, minor, tonic)
                + KeyWeights.LAST_NOTE * profiles.last(minor, last().fifths() - tonic)
                + KeyWeights.FIRST_NOTE * profiles.first(minor, first().fifths() - tonic)
                + profiles.mode(minor);
    }
}
