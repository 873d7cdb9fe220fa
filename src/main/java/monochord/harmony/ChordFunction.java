package monochord.harmony;

import java.util.EnumSet;
import java.util.Set;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;

/**
 * What one chord does in one key: the only place where chords are given functions.
 *
 * <p>Sources: for the key's own chords Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "harmonicFunctions"; for
 * applied chords its page "appliedChords"; for borrowed ones Integrated Music Theory (open university course text),
 * lesson 16a.
 *
 * @param main what it does wherever it stands; an applied chord is the dominant of its goal
 * @param root the degree of the major scale on which it stands
 * @param goal the chord that it is applied to, or null
 */
public record ChordFunction(HarmonicFunction main, Degree root, Numeral goal) {
    private static final Degree LEADING_NOTE = Degree.of(7, 0);
    private static final int FIFTH = 5;
    private static final int SIXTH = 6;

    public static ChordFunction of(Chord chord, Key key) {
        Numeral goal = Numeral.of(chord, key).target();
        return new ChordFunction(
                goal == null ? main(chord, key) : HarmonicFunction.DOMINANT, key.degreeOf(chord.root()), goal);
    }

    private static HarmonicFunction main(Chord chord, Key key) {
        Degree root = key.degreeOf(chord.root());
        boolean leads = chord.holds(key.note(LEADING_NOTE));
        boolean own = key.holds(chord.root());
        return switch (root.number()) {
            // The tonic of either mode; a root beside it is another chord.
            case 1 -> root.alteration() == 0 ? HarmonicFunction.TONIC : HarmonicFunction.COLOUR;
            // iii, and III of minor, share two tones with the tonic. Lesson 16a: ♭III is a colour, a third from the
            // tonic.
            case 3 -> own ? HarmonicFunction.TONIC : HarmonicFunction.COLOUR;
            // vi, and VI of minor, likewise. Lesson 16a: ♭VI is a predominant.
            case SIXTH ->
                own && (!key.isMinor() || root.alteration() < 0)
                        ? HarmonicFunction.TONIC
                        : HarmonicFunction.SUBDOMINANT;
            // Lesson 16a: without its leading note the chord on the fifth is no dominant; a fourth will fall to it.
            case FIFTH ->
                leads || chord.kind().holds(Interval.PERFECT_FOURTH)
                        ? HarmonicFunction.DOMINANT
                        : HarmonicFunction.COLOUR;
            // vii° leads home with the leading note. Lesson 16a: ♭VII, without it, is the subdominant of the
            // subdominant.
            case 7 ->
                chord.kind().holds(Interval.DIMINISHED_FIFTH) && leads
                        ? HarmonicFunction.DOMINANT
                        : leads ? HarmonicFunction.COLOUR : HarmonicFunction.SUBDOMINANT;
            default -> HarmonicFunction.SUBDOMINANT;
        };
    }

    /** Whether it leads to the tonic of the key itself. */
    public boolean isDominantOfKey() {
        return main == HarmonicFunction.DOMINANT && goal == null;
    }

    /**
     * What the chord does between two others.
     *
     * <p>A chord on the sixth degree does two things, by its place: behind a dominant it is where the tonic was expected,
     * before one it prepares it, as ii and IV do. Elsewhere vi goes with the tonic; ♭VI may do either.
     *
     * <p>A chord applied to the fifth prepares the dominant where one follows; any other applied chord serves its goal alone.
     *
     * <p>Sources: Open Music Theory (2014), pages "harmonicFunctions" (I vi V I), "cadenceTypes" (the deceptive cadence)
     * and "appliedChords"; Integrated Music Theory, lesson 16a, for ♭VI as deceptive goal.
     *
     * @param before the chord before, or null
     * @param next the chord behind, or null
     * @return empty for a chord that serves its goal alone
     */
    public Set<HarmonicFunction> between(ChordFunction before, ChordFunction next) {
        boolean beforeDominant = next != null && next.isDominantOfKey();
        if (goal != null) {
            return isAppliedToFifth() && beforeDominant
                    ? EnumSet.of(HarmonicFunction.SUBDOMINANT)
                    : EnumSet.noneOf(HarmonicFunction.class);
        }
        return root.number() == SIXTH
                ? onSixth(before != null && before.isDominantOfKey(), beforeDominant)
                : EnumSet.of(main);
    }

    private boolean isAppliedToFifth() {
        return goal.degree() == FIFTH && goal.alteration() == 0;
    }

    private Set<HarmonicFunction> onSixth(boolean behindDominant, boolean beforeDominant) {
        Set<HarmonicFunction> does = EnumSet.noneOf(HarmonicFunction.class);
        if (behindDominant) {
            does.add(HarmonicFunction.TONIC);
        }
        if (beforeDominant) {
            does.add(HarmonicFunction.SUBDOMINANT);
        }
        if (does.isEmpty()) {
            does.add(main);
            does.add(root.alteration() < 0 ? HarmonicFunction.TONIC : main);
        }
        return does;
    }
}
