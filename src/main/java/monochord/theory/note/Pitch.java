package monochord.theory.note;

/**
 * A note at a height, such as middle C: a note name and an octave.
 *
 * <p>Middle C is {@code C4}, note number 60. The number of an octave follows the letter, so {@code Cb4} sounds as B3
 * and {@code B#3} as C4. Equal pitches are spelled alike; to ask what sounds alike, compare {@link #midiNumber()}.
 *
 * <p>Text form: a note name and an octave from −1 to 10, such as {@code Ab3}. {@link #parse} reads all that {@link
 * #toString} writes.
 *
 * <p>Source: octave numbers, W3C MusicXML 4.0, type {@code octave}; note 60, MIDI 1.0 Detailed Specification 4.2.
 *
 * @param octave the octave of the letter, from −1 to 10
 */
public record Pitch(NoteName name, int octave) implements Notated, Comparable<Pitch> {
    private static final int LOWEST_OCTAVE = -1;
    private static final int HIGHEST_OCTAVE = 10;

    /** @throws IllegalArgumentException if the octave is not from −1 to 10 */
    public Pitch {
        if (octave < LOWEST_OCTAVE || octave > HIGHEST_OCTAVE) {
            throw new IllegalArgumentException("octave must be from -1 to 10, not " + octave);
        }
    }

    /** @throws Unreadable if the text is not a pitch */
    public static Pitch parse(String text) {
        Cursor cursor = new Cursor(text, "a pitch", "Ab3");
        NoteName name = NoteName.read(cursor);
        int start = cursor.place();
        boolean below = cursor.take('-') || cursor.take('−');
        int octave = cursor.number(2, "an octave from -1 to 10");
        cursor.end();
        if (octave > HIGHEST_OCTAVE || below && octave != 1) {
            cursor.back(start);
            throw cursor.because("the octave must be from -1 to 10");
        }
        return new Pitch(name, below ? -octave : octave);
    }

    /** The lowest pitch of this name that does not sound below {@code floor}. */
    public static Pitch atOrAbove(NoteName name, Pitch floor) {
        Pitch some = new Pitch(name, 4);
        int rise = Math.floorDiv(some.midiNumber() - floor.midiNumber(), 12);
        return new Pitch(name, some.octave - rise);
    }

    /** Half steps above C−1: 60 for middle C. Within 0 to 127 for all that MIDI can play. */
    public int midiNumber() {
        return 12 + 7 * name.fifths() + 12 * octaves();
    }

    /** Octaves beside the fifths, when the pitch is measured as a vector from C0 like an interval. */
    private int octaves() {
        return octave - Math.floorDiv(4 * name.fifths(), 7);
    }

    /** Letters above C0: the height on a staff, whatever the accidental. */
    public int staffPosition() {
        return 7 * octave + name.letterStep();
    }

    /** In equal temperament with A4 = 440 Hz (ISO 16:1975). */
    public double hertz() {
        return 440 * Math.pow(2, (midiNumber() - 69) / 12.0);
    }

    /** @throws IllegalArgumentException if the pitch reached has no octave from −1 to 10 */
    public Pitch plus(Interval interval) {
        int position = staffPosition() + interval.staffSteps();
        return new Pitch(name.plus(interval), Math.floorDiv(position, 7));
    }

    public Pitch minus(Interval interval) {
        return plus(interval.reversed());
    }

    /** The interval from this pitch to another; it points down if the other is lower. */
    public Interval to(Pitch other) {
        return new Interval(other.name.fifths() - name.fifths(), other.octaves() - octaves());
    }

    public boolean soundsLike(Pitch other) {
        return midiNumber() == other.midiNumber();
    }

    /** By sound, then by letter. */
    @Override
    public int compareTo(Pitch other) {
        int bySound = Integer.compare(midiNumber(), other.midiNumber());
        return bySound != 0 ? bySound : Integer.compare(staffPosition(), other.staffPosition());
    }

    @Override
    public String write(Signs signs) {
        return name.write(signs) + octave;
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
