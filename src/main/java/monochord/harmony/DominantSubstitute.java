package monochord.harmony;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * Dominant sevenths that stand for the dominant a tritone away, and the one that goes home by a whole step.
 *
 * <p>Source for the tritone substitute: Open Music Theory, second edition (2021 to 2023), chapter "Substitutions"; that
 * it sounds as an augmented sixth, Open Music Theory (2014), "augmentedSixthChords". The backdoor dominant: common
 * practice, no source.
 */
final class DominantSubstitute {
    private static final Degree LOWERED_SIXTH = Degree.of(6, -1);
    private static final Degree LOWERED_SEVENTH = Degree.of(7, -1);

    private DominantSubstitute() {}

    /**
     * The dominant that a seventh chord stands for: the one on the root a tritone away, where both lead to the tonic or to
     * a major or minor chord of the key. Its root is a half step above its goal, and not in the key, but for the lowered
     * sixth of minor.
     */
    static Optional<Numeral> of(Chord chord, Key key) {
        Degree root = key.degreeOf(chord.root());
        boolean isLow = !key.holds(chord.root()) || root.equals(LOWERED_SIXTH);
        boolean stands = isDominantSeventh(chord) && isLow && !root.equals(LOWERED_SEVENTH);
        if (!stands) {
            return Optional.empty();
        }
        NoteName goal = chord.root().plus(Interval.MINOR_SECOND.reversed());
        Chord dominant = new Chord(goal.plus(Interval.PERFECT_FIFTH), ChordKind.DOMINANT_SEVENTH);
        Numeral numeral = Numeral.of(dominant, key);
        boolean leadsHome = goal.equals(key.tonic());
        return leadsHome || numeral.target() != null ? Optional.of(numeral) : Optional.empty();
    }

    /** Whether it is the seventh chord on the lowered seventh of a major key. */
    static boolean isBackdoor(Chord chord, Key key) {
        return isDominantSeventh(chord)
                && !key.isMinor()
                && key.degreeOf(chord.root()).equals(LOWERED_SEVENTH);
    }

    private static boolean isDominantSeventh(Chord chord) {
        return chord.kind().quality() == TriadQuality.MAJOR && chord.kind().holds(Interval.MINOR_SEVENTH);
    }
}
