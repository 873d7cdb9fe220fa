package monochord.theory;

import java.util.List;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.ToneSet;

/**
 * Finds the numeral of a chord in a key.
 *
 * <p>An augmented sixth chord on the lowered sixth gets its own name. A major triad or seventh chord that leads down a
 * fifth to a chord of the key, and a diminished one that leads up a half step to one, are read as applied to it unless
 * the key holds all their tones: D7 in C major is {@code V7/V}. All other chords are named by the degree they stand on.
 *
 * <p>Source for what can be applied: Open Music Theory (2014), page "appliedChords"; only major and minor chords are
 * taken for a tonic.
 */
final class NumeralNaming {
    private static final List<Numeral> AUGMENTED_SIXTHS =
            List.of(Numeral.parse("It6"), Numeral.parse("Fr43"), Numeral.parse("Ger65"));

    private static final List<ScaleKind> FORMS_OF_MINOR =
            List.of(ScaleKind.HARMONIC_MINOR, ScaleKind.MELODIC_MINOR, ScaleKind.MAJOR);

    private NumeralNaming() {}

    static Numeral numeral(Chord chord, Key key) {
        for (Numeral named : AUGMENTED_SIXTHS) {
            if (named.kind().equals(chord.kind()) && named.in(key).equals(chord)) {
                return named;
            }
        }
        Numeral applied = applied(chord, key);
        return (applied != null ? applied : onDegree(chord, key)).over(chord.bass(), key);
    }

    static Numeral onDegree(Chord chord, Key key) {
        Degree root = key.degreeOf(chord.root());
        Numeral major = Numeral.of(root.number(), root.alteration(), chord.kind());
        return key.mode() == Mode.AEOLIAN ? asInMinor(major, root) : major;
    }

    /** The least accidental that puts the root on its place in minor: {@code VI} rather than {@code bVI}. */
    private static Numeral asInMinor(Numeral major, Degree root) {
        for (int alteration : new int[] {0, root.alteration(), root.alteration() + 1}) {
            Numeral numeral = Numeral.of(root.number(), alteration, major.kind());
            if (numeral.root(Mode.AEOLIAN).equals(root)) {
                return numeral;
            }
        }
        return major;
    }

    /** The key's own triad on the degree of that number. */
    static Numeral own(int number, Key key) {
        return onDegree(new Chord(key.note(number), ownTriad(number, key)), key);
    }

    private static Numeral applied(Chord chord, Key key) {
        Numeral function = function(chord.kind());
        if (function == null || key.isOwn(chord) || isCalledByDegree(chord, key)) {
            return null;
        }
        Interval toTarget = function.degree() == 5 ? Interval.PERFECT_FOURTH : Interval.MINOR_SECOND;
        NoteName target = chord.root().plus(toTarget);
        boolean tonicOfKey = target.equals(key.tonic());
        return tonicOfKey || !key.holds(target) ? null : appliedTo(function, target, key);
    }

    private static Numeral function(ChordKind kind) {
        return switch (kind.quality()) {
            case MAJOR ->
                kind.holds(Interval.MAJOR_SEVENTH)
                                || kind.holds(Interval.MAJOR_SIXTH) && !kind.holds(Interval.MINOR_SEVENTH)
                        ? null
                        : Numeral.of(5, 0, kind);
            case DIMINISHED -> Numeral.of(7, 0, kind);
            default -> null;
        };
    }

    private static Numeral appliedTo(Numeral function, NoteName target, Key key) {
        Numeral goal = own(key.degreeOf(target).number(), key);
        boolean tonic = goal.kind().equals(ChordKind.MAJOR) || goal.kind().equals(ChordKind.MINOR);
        return tonic ? function.appliedTo(goal) : null;
    }

    /** The kind of the key's own triad on the degree of that number; in minor the fifth carries the major one. */
    static ChordKind ownTriad(int number, Key key) {
        if (key.mode() == Mode.AEOLIAN && number == 5) {
            return ChordKind.MAJOR;
        }
        int root = key.mode().degree(number).fifths();
        int third = key.mode().degree((number + 1) % 7 + 1).fifths();
        int fifth = key.mode().degree((number + 3) % 7 + 1).fifths();
        long tones = ToneSet.ROOT | ToneSet.bit(third - root) | ToneSet.bit(fifth - root);
        return ChordKind.ofTones(tones).orElseThrow();
    }

    /**
     * Whether a chord from outside a minor key is called by its degree all the same, not as applied: one with the raised
     * sixth or seventh, as IV, or with the major third, as I. Common practice, no source.
     */
    private static boolean isCalledByDegree(Chord chord, Key key) {
        return key.mode() == Mode.AEOLIAN
                && FORMS_OF_MINOR.stream().anyMatch(kind -> new Scale(key.tonic(), kind).holds(chord));
    }
}
