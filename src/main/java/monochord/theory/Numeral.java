package monochord.theory;

import java.util.Optional;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.Notated;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A chord seen from a key: a Roman numeral with its quality, inversion and target, such as the lowered sixth's major
 * seventh chord or the dominant of the second degree.
 *
 * <p>A numeral says its own quality: capitals for a major third, small letters for a minor one, {@code o} diminished,
 * {@code ø} half-diminished, {@code +} augmented, and behind it what a chord symbol would say. So {@code I7} is a dominant
 * seventh chord on the first degree and {@code Imaj7} the one with the key's own seventh. Equal numerals have the same
 * parts, not just the same tones.
 *
 * <p>A lowered or raised degree counts from the major scale. In a minor key {@code III VI VII} stand on that key's own
 * degrees ({@code bIII bVI bVII} mean the same), while {@code vi} and {@code vii} stand on the raised ones, as do {@code
 * #VI #vi #VII #vii}.
 *
 * <p>Text form: {@code [accidental] roman [quality] [figure or suffix] [ '/' target ]}, such as {@code bVImaj7}, {@code
 * V65/ii}, {@code viio7/V}, {@code IVadd9}; also {@code N6}, {@code It6}, {@code Fr43}, {@code Ger65} and {@code Cad64}.
 * A number behind a slash is the degree in the bass: {@code IV/5}. {@link #parse} reads all that {@link #toString}
 * writes.
 *
 * <p>Source: RomanText (Tymoczko, Gotham, Cuthbert, Ariza, ISMIR 2019) for sixth and seventh degrees in minor; figures,
 * Open Music Theory (2014), page "thoroughbassFigures".
 *
 * @param form whether it is written as a degree or under a name of its own
 * @param degree the degree counted as {@link #root} says, 1 to 7
 * @param alteration half steps as written: −1 for {@code bVI}
 * @param bass the interval from the root up to the bass, within an octave; a unison where a degree is the bass
 * @param bassDegree the degree in the bass where that is no tone of the chord, or null
 * @param target the numeral whose chord is taken for a tonic, or null
 */
public record Numeral(
        Form form, int degree, int alteration, ChordKind kind, Interval bass, Degree bassDegree, Numeral target)
        implements Notated {
    /** How a numeral is written. */
    public enum Form {
        DEGREE(""),
        NEAPOLITAN("N"),
        ITALIAN("It"),
        FRENCH("Fr"),
        GERMAN("Ger"),
        CADENTIAL("Cad");

        private final String name;

        Form(String name) {
            this.name = name;
        }

        String written() {
            return name;
        }
    }

    /** @throws Unreadable if the text is not a numeral */
    public static Numeral parse(String text) {
        return NumeralText.parse(text);
    }

    /** The numeral that names a chord in a key: see {@link NumeralNaming}. */
    public static Numeral of(Chord chord, Key key) {
        return NumeralNaming.numeral(chord, key);
    }

    /** The numeral of the degree the chord stands on, also where it could be read as applied to another. */
    public static Numeral onDegree(Chord chord, Key key) {
        return NumeralNaming.onDegree(chord, key).over(chord.bass(), key);
    }

    /** A numeral in root position without a target. */
    public static Numeral of(int degree, int alteration, ChordKind kind) {
        return new Numeral(Form.DEGREE, degree, alteration, kind, Interval.UNISON, null, null);
    }

    public Optional<Numeral> appliedTo() {
        return Optional.ofNullable(target);
    }

    /** The same chord as it stands in the key that {@code tonicised} makes for a moment. */
    public Numeral appliedTo(Numeral tonicised) {
        return new Numeral(form, degree, alteration, kind, bass, bassDegree, tonicised);
    }

    /**
     * The same chord with its own tone at that interval in the bass.
     *
     * @throws IllegalArgumentException if the chord has no such tone
     */
    public Numeral over(Interval tone) {
        if (!kind.holds(tone)) {
            throw new IllegalArgumentException("the bass must be a tone of the chord, not at " + tone);
        }
        return new Numeral(form, degree, alteration, kind, tone, null, target);
    }

    /** The same chord over a degree that is none of its tones. */
    Numeral over(Degree foreign) {
        return new Numeral(form, degree, alteration, kind, Interval.UNISON, foreign, target);
    }

    /** The same chord with that note in the bass, one of its own or not, as the key has it. */
    public Numeral over(NoteName note, Key key) {
        Key here = keyHere(key);
        Interval aboveRoot = here.note(root(here.mode())).to(note);
        return kind.holds(aboveRoot) ? over(aboveRoot) : over(here.degreeOf(note));
    }

    /** The chord this numeral names in the key. */
    public Chord in(Key key) {
        Key here = keyHere(key);
        NoteName root = here.note(root(here.mode()));
        boolean minor = form == Form.CADENTIAL && here.isMinor();
        NoteName lowest = bassDegree == null ? root.plus(bass) : here.note(bassDegree);
        return new Chord(root, minor ? ChordKind.MINOR : kind, lowest);
    }

    /** The key itself, or the one on the target's root: minor where the target has a minor third. */
    private Key keyHere(Key key) {
        return target == null ? key : target.tonicised(key);
    }

    Key tonicised(Key key) {
        NoteName root = in(key).root();
        return kind.holds(Interval.MINOR_THIRD) ? Key.minor(root) : Key.major(root);
    }

    /** The degree of the root counted from the major scale, as it stands in a key of that mode. */
    Degree root(Mode mode) {
        return Degree.of(degree, mode == Mode.AEOLIAN ? alterationInMinor() : alteration);
    }

    private int alterationInMinor() {
        if (degree != 3 && degree != 6 && degree != 7) {
            return alteration;
        }
        if (alteration == 0) {
            return degree != 3 && hasMinorThird() ? 0 : -1;
        }
        return alteration > 0 ? alteration - 1 : alteration;
    }

    boolean hasMinorThird() {
        return kind.holds(Interval.MINOR_THIRD);
    }

    /** With the signs of printed music, or in ASCII alone: there {@code ø} becomes {@code /o}, which is read as well. */
    @Override
    public String write(Signs signs) {
        return signs.isAscii() ? Signs.toAscii(toString()) : NumeralText.write(this, signs);
    }

    /** In ASCII but for {@code ø}, which has no other form in common use: {@code viiø7}. */
    @Override
    public String toString() {
        return NumeralText.write(this, Signs.ASCII);
    }
}
