package monochord.theory;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import monochord.theory.note.Cursor;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A key, such as D major: a tonic and a mode. The mode is nearly always major or minor.
 *
 * <p>Text form: {@code tonic mode}, such as {@code D major} or {@code Bb dorian}. {@link #parse} reads all that {@link
 * #toString} writes, a tonic alone as major, and {@code Dm} as minor.
 */
public record Key(NoteName tonic, Mode mode) {
    private static final Degree LEADING_NOTE = Degree.of(7, 0);
    private static final int FURTHEST_SIGNATURE = 7;

    public static Key major(NoteName tonic) {
        return new Key(tonic, Mode.IONIAN);
    }

    public static Key minor(NoteName tonic) {
        return new Key(tonic, Mode.AEOLIAN);
    }

    /** @throws Unreadable if the text is not a key */
    public static Key parse(String text) {
        Cursor cursor = new Cursor(text, "a key", "D major");
        NoteName tonic = NoteName.read(cursor);
        if (Math.abs(tonic.alteration()) > 2) {
            cursor.back(3);
            throw cursor.because("no key has a tonic with three accidentals");
        }
        int start = cursor.place();
        return new Key(tonic, mode(cursor, start));
    }

    private static Mode mode(Cursor cursor, int start) {
        boolean apart = cursor.take(' ') || cursor.take('-');
        String word = cursor.takeRest().strip();
        boolean minus = apart && word.isEmpty() && cursor.before('-');
        switch (minus ? "m" : apart && word.length() > 1 ? word.toLowerCase(Locale.ROOT) : word) {
            case "", "maj", "M":
                return Mode.IONIAN;
            case "m", "min", "natural minor":
                return Mode.AEOLIAN;
            default:
                return modeNamed(cursor, word, start, apart);
        }
    }

    private static Mode modeNamed(Cursor cursor, String word, int start, boolean apart) {
        try {
            return Mode.parse(apart || word.matches("(?i)major|minor") ? word : "");
        } catch (Unreadable unreadable) {
            cursor.back(start);
            throw cursor.unexpected("major, minor or another mode");
        }
    }

    /** The fifteen major keys with up to seven sharps or flats, from C outwards: C G F D Bb … C# Cb. */
    public static List<Key> majorKeys() {
        return IntStream.rangeClosed(1, 2 * FURTHEST_SIGNATURE + 1)
                .map(i -> i % 2 == 0 ? i / 2 : -(i / 2))
                .mapToObj(fifths -> major(NoteName.at(fifths)))
                .toList();
    }

    /** The fifteen minor keys with up to seven sharps or flats, from A outwards. */
    public static List<Key> minorKeys() {
        return majorKeys().stream().map(Key::relative).toList();
    }

    /** Sharps of the signature, flats counted below zero. From −7 to 7 for the keys in use; past that none is printed. */
    public int signature() {
        return tonic.fifths() + mode.flattest() - Mode.IONIAN.flattest();
    }

    /** Whether the key has a signature of at most seven sharps or flats. */
    public boolean isInUse() {
        return Math.abs(signature()) <= FURTHEST_SIGNATURE;
    }

    /** The sharps or flats of the signature in the order they are written. */
    public List<NoteName> signatureNotes() {
        int count = Math.abs(signature());
        boolean sharps = signature() > 0;
        return IntStream.range(0, count)
                .mapToObj(i -> sharps ? NoteName.at(6 + i) : NoteName.at(-2 - i))
                .toList();
    }

    public Scale scale() {
        return new Scale(tonic, ScaleKind.of(mode));
    }

    public boolean isMinor() {
        return mode.isMinor();
    }

    /** The note on a degree counted from the major scale, as {@code b6} is. */
    public NoteName note(Degree degree) {
        return degree.above(tonic);
    }

    /** The note on the degree of that number, 1 to 7, in this key's own mode. */
    public NoteName note(int number) {
        return mode.degree(number).above(tonic);
    }

    /** The degree a note stands on, counted from the major scale. */
    public Degree degreeOf(NoteName name) {
        return Degree.ofFifths(name.fifths() - tonic.fifths());
    }

    public boolean holds(NoteName name) {
        return mode.holds(degreeOf(name));
    }

    /**
     * Whether the chord is one of the key's own: its tones lie in the scale, or, in minor, it stands on the fifth or on the
     * raised seventh and its tones lie in harmonic minor. For V and vii° take the leading note there; on the other degrees
     * a chord with the raised seventh is heard as something special.
     *
     * <p>Source: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "triads", for the chords in use in minor.
     */
    public boolean isOwn(Chord chord) {
        if (scale().holds(chord)) {
            return true;
        }
        boolean dominant = chord.root().equals(note(5)) || chord.root().equals(note(LEADING_NOTE));
        return mode == Mode.AEOLIAN && dominant && new Scale(tonic, ScaleKind.HARMONIC_MINOR).holds(chord);
    }

    /** The key on the same tonic in another mode. */
    public Key parallel(Mode other) {
        return new Key(tonic, other);
    }

    /** The parallel minor of a key with a major third, the parallel major of one with a minor third. */
    public Key parallel() {
        return parallel(isMinor() ? Mode.IONIAN : Mode.AEOLIAN);
    }

    /** The minor or major key with the same notes. */
    public Key relative() {
        Mode other = isMinor() ? Mode.IONIAN : Mode.AEOLIAN;
        return new Key(NoteName.at(signature() - other.flattest() + Mode.IONIAN.flattest()), other);
    }

    public String write(Signs signs) {
        return tonic.write(signs) + " " + mode;
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
