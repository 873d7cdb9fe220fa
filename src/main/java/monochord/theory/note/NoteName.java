package monochord.theory.note;

/**
 * A note name without an octave, such as E flat: a point on the line of fifths.
 *
 * <p>Equal names are spelled alike: F sharp does not equal G flat, though a keyboard has one key for both. To ask about
 * the key, compare {@link #pitchClass()}.
 *
 * <p>Text form: {@code letter { 'b' | '#' | 'x' }}, such as {@code Eb} or {@code F##}; the signs ♭ ♯ 𝄫 𝄪 and small
 * letters are read as well. {@link #parse} reads all that {@link #toString} writes.
 *
 * @param fifths how many fifths the name lies above C: G is 1, F is −1, E flat is −3; from −100 to 100
 */
public record NoteName(int fifths) implements Notated {
    /** C, the origin of the line. */
    public static final NoteName C = new NoteName(0);

    static final int FARTHEST = 100;

    private static final Clause LETTER =
            Clause.byNaming("a letter from A to G", "a letter from A to H", "a syllable from Do to Si");
    private static final String LETTERS_BY_FIFTHS = "FCGDAEB";
    /** Fifths from a name to the next one for the same key. */
    private static final int SAME_KEY = 12;

    private static final int FIFTHS_PER_SHARP = 7;
    private static final NoteName[] LINE = new NoteName[2 * FARTHEST + 1];

    static {
        for (int i = 0; i < LINE.length; i++) {
            LINE[i] = new NoteName(i - FARTHEST);
        }
    }

    /** @throws IllegalArgumentException if the point lies more than 100 fifths from C */
    public NoteName {
        if (fifths < -FARTHEST || fifths > FARTHEST) {
            throw new IllegalArgumentException("fifths must be from -100 to 100, not " + fifths);
        }
    }

    /** @throws IllegalArgumentException if the point lies more than 100 fifths from C */
    public static NoteName at(int fifths) {
        return fifths < -FARTHEST || fifths > FARTHEST ? new NoteName(fifths) : LINE[fifths + FARTHEST];
    }

    /**
     * @param letter {@code 'A'} to {@code 'G'}
     * @param alteration half steps above the letter's own note, negative for flats
     * @throws IllegalArgumentException if the letter is none of these, or the alteration goes past 13
     */
    public static NoteName of(char letter, int alteration) {
        int place = LETTERS_BY_FIFTHS.indexOf(letter);
        if (place < 0) {
            throw new IllegalArgumentException("letter must be from A to G, not " + letter);
        }
        return at(place - 1 + FIFTHS_PER_SHARP * alteration);
    }

    /** @throws Unreadable if the text is not a note name */
    public static NoteName parse(String text) {
        Cursor cursor = new Cursor(text, "a note name", "Eb");
        NoteName name = read(cursor);
        cursor.end("b, bb, #, x");
        return name;
    }

    public static NoteName read(Cursor cursor) {
        char letter = Character.toUpperCase(cursor.peek());
        if (letter < 'A' || letter > 'G' || cursor.peek() > 'g') {
            throw cursor.unexpected(LETTER);
        }
        cursor.next();
        return of(letter, cursor.accidentals());
    }

    /** {@code 'A'} to {@code 'G'}. */
    public char letter() {
        return LETTERS_BY_FIFTHS.charAt(Math.floorMod(fifths + 1, FIFTHS_PER_SHARP));
    }

    /** Half steps above the letter's own note: −1 for one flat, 2 for a double sharp. */
    public int alteration() {
        return Math.floorDiv(fifths + 1, FIFTHS_PER_SHARP);
    }

    /** The letter's place in C D E F G A B, from 0. */
    public int letterStep() {
        return Math.floorMod(4 * fifths, 7);
    }

    /** Half steps above the nearest C below, from 0 to 11: the key on the keyboard, whatever its spelling. */
    public int pitchClass() {
        return Math.floorMod(7 * fifths, 12);
    }

    public NoteName plus(Interval interval) {
        return at(fifths + interval.fifths());
    }

    public NoteName minus(Interval interval) {
        return at(fifths - interval.fifths());
    }

    /** The interval up from this note to the nearest {@code upper} above it, less than an octave in letters. */
    public Interval to(NoteName upper) {
        return Interval.simple(upper.fifths - fifths);
    }

    /** Whether both names stand for the same key of the keyboard. */
    public boolean soundsLike(NoteName other) {
        return pitchClass() == other.pitchClass();
    }

    /** The keys of the keyboard that notes have, octaves left aside: one bit each, C the lowest of twelve. */
    public static int keys(Iterable<NoteName> notes) {
        int keys = 0;
        for (NoteName note : notes) {
            keys |= 1 << note.pitchClass();
        }
        return keys;
    }

    /** The name on the same key with the fewest accidentals, flats where there is a choice of one. */
    public NoteName simplest() {
        int nearest = Math.floorMod(fifths + 5, 12) - 5;
        return at(nearest == 6 ? -6 : nearest);
    }

    /**
     * The same key under the nearest name on the other side of the line of fifths: the flat of a sharp, the sharp of a flat; of
     * C, G, D, A, E and B the name on the letter above, of F the one below.
     */
    public NoteName respelled() {
        return at(fifths < 0 ? fifths + SAME_KEY : fifths - SAME_KEY);
    }

    // The methods a record is given are slow to link, and this one is asked on the way to the first answer.
    @Override
    public boolean equals(Object other) {
        return other instanceof NoteName that && that.fifths == fifths;
    }

    @Override
    public int hashCode() {
        return fifths;
    }

    @Override
    public String write(Signs signs) {
        return signs.naming().write(this, signs);
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
