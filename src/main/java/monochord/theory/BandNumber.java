package monochord.theory;

import monochord.theory.note.Cursor;
import monochord.theory.note.Degree;
import monochord.theory.note.Notated;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * Chords as bands call them, by number: {@code 4 1 5 b6 6-}.
 *
 * <p>A number alone is the key's own triad on that degree; {@code 6} and {@code 6-} are one chord in C major. A lowered or
 * raised number alone is major, as is {@code 2M}. Behind the number stands what a chord symbol would say, literally:
 * {@code 57}, {@code b6maj7}, {@code 2-7}. A number behind a slash is the degree in the bass: {@code 1/3}. In minor
 * {@code 5} is the major chord with the leading note, and {@code 3 6 7} are the key's own.
 *
 * <p>Common practice, no source; writings differ from band to band, so what was understood is to be shown.
 */
public final class BandNumber {
    private static final String WHAT = "a chord number";
    private static final String EXAMPLE = "b6maj7";

    private BandNumber() {}

    /** @throws Unreadable if the text is not a chord number */
    public static Numeral parse(String text, Key key) {
        Cursor cursor = new Cursor(text, WHAT, EXAMPLE);
        int alteration = cursor.accidentals();
        if (cursor.peek() < '1' || cursor.peek() > '7') {
            throw cursor.unexpected("a number from 1 to 7");
        }
        int number = cursor.next() - '0';
        if (Math.abs(alteration) > 2) {
            throw cursor.because("at most two accidentals stand before a number");
        }
        int slash = slashBeforeBass(text);
        String suffix = cursor.upTo(slash < 0 ? text.length() : Math.max(slash, cursor.place()));
        Numeral numeral = numeral(number, alteration, suffix, key, cursor);
        return slash < 0 ? numeral : over(numeral, text.substring(slash + 1), text, slash + 1, key);
    }

    /** The last slash, unless it is the one of a six-nine chord. */
    private static int slashBeforeBass(String text) {
        int slash = text.lastIndexOf('/');
        return slash > 0 && !text.startsWith("6/9", slash - 1) ? slash : -1;
    }

    private static Numeral numeral(int number, int alteration, String suffix, Key key, Cursor cursor) {
        if (suffix.isEmpty()) {
            return plain(number, alteration, key);
        }
        int start = cursor.place();
        String literal = suffix.equals("M") ? "" : suffix.startsWith("^") ? suffix.substring(1) : suffix;
        try {
            return standing(number, alteration, ChordKind.parse(literal), key);
        } catch (Unreadable unreadable) {
            cursor.back(Math.min(start + unreadable.place(), start + suffix.length()));
            throw cursor.unexpected("-, 7, maj7, sus4 or another suffix, /");
        }
    }

    private static Numeral plain(int number, int alteration, Key key) {
        boolean own = root(number, alteration, key).equals(key.mode().degree(number));
        return own ? NumeralNaming.own(number, key) : standing(number, alteration, ChordKind.MAJOR, key);
    }

    private static Numeral standing(int number, int alteration, ChordKind kind, Key key) {
        boolean leadingNote = key.mode() == Mode.AEOLIAN && number == 7 && alteration == 0;
        Degree root = leadingNote && kind.quality() == TriadQuality.DIMINISHED
                ? Degree.of(7, 0)
                : root(number, alteration, key);
        return NumeralNaming.onDegree(new Chord(key.note(root), kind), key);
    }

    /**
     * A number alone counts the key's own degree. An accidental that says what the key does anyway is read as a reminder
     * ({@code b6} and {@code 6} are one degree in minor); any other changes the key's own degree.
     */
    private static Degree root(int number, int alteration, Key key) {
        int own = key.mode().degree(number).alteration();
        return Degree.of(number, own * alteration > 0 ? alteration : own + alteration);
    }

    private static Numeral over(Numeral numeral, String bass, String text, int offset, Key key) {
        Degree degree;
        try {
            degree = Degree.parse(bass);
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, offset);
        }
        NoteName note = key.note(root(degree.number(), degree.alteration(), key));
        return numeral.over(note, key);
    }

    /** The number of a chord in a key, to be written for whoever reads it. */
    public static Notated of(Chord chord, Key key) {
        return new NumberedChord(chord, key);
    }

    private record NumberedChord(Chord chord, Key key) implements Notated {
        @Override
        public String write(Signs signs) {
            return BandNumber.write(chord, key, signs);
        }
    }

    /** The number of a chord in a key, its quality always said, so that no reader has to know the key's own chords. */
    public static String write(Chord chord, Key key, Signs signs) {
        Degree root = key.degreeOf(chord.root());
        boolean minorSeventh =
                key.mode() == Mode.AEOLIAN && root.number() == 7 && chord.kind().quality() == TriadQuality.DIMINISHED;
        String accidental = signs.accidental(minorSeventh ? root.alteration() : accidental(root, key));
        String bass = chord.isInverted() ? "/" + bassNumber(chord.bass(), key, signs) : "";
        boolean bareMajor = chord.kind().equals(ChordKind.MAJOR) && accidental.isEmpty();
        String suffix = bareMajor ? majorIfNotOwn(root.number(), key) : suffix(chord.kind(), signs);
        return accidental + root.number() + suffix + bass;
    }

    /** A number alone is the key's own triad, so a major chord says so where that triad is another. */
    private static String majorIfNotOwn(int number, Key key) {
        return NumeralNaming.ownTriad(number, key).equals(ChordKind.MAJOR) ? "" : "M";
    }

    /** The accidental that {@link #root} reads as this degree. */
    private static int accidental(Degree root, Key key) {
        int own = key.mode().degree(root.number()).alteration();
        int change = root.alteration() - own;
        return own * change > 0 ? root.alteration() : change;
    }

    private static String suffix(ChordKind kind, Signs signs) {
        String suffix = kind.write(signs);
        boolean minor = suffix.startsWith("m") && !suffix.startsWith("maj");
        String diminished = signs.isAscii() ? "o" : "°";
        return minor ? "-" + suffix.substring(1) : suffix.startsWith("dim") ? diminished + suffix.substring(3) : suffix;
    }

    private static String bassNumber(NoteName bass, Key key, Signs signs) {
        Degree degree = key.degreeOf(bass);
        return signs.accidental(accidental(degree, key)) + degree.number();
    }
}
