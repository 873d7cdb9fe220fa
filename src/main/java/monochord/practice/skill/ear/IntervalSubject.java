package monochord.practice.skill.ear;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import monochord.practice.reading.IntervalReading;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/**
 * An interval to be heard, and how.
 *
 * <p>Text form: {@code interval [ 'down' | 'together' ]}, such as {@code m6} (upwards), {@code P5 down}, {@code tritone
 * together}. {@link #parse} reads all that {@link #toString} writes.
 *
 * @param size up to a tenth; a tritone is an augmented fourth here
 */
record IntervalSubject(Interval size, Manner manner) {
    /** How the two notes follow each other. */
    enum Manner {
        UP,
        DOWN,
        TOGETHER;

        String suffix() {
            return this == UP ? "" : " " + name().toLowerCase(Locale.ROOT);
        }
    }

    private static final String WHAT = "an interval to hear";
    private static final String EXAMPLE = "m6 down";
    private static final String TRITONE = "tritone";
    private static final int LARGEST = 10;
    private static final List<String> SIZES =
            List.of("P8", "P5", "P4", "M3", "m3", "M2", "M6", "m6", "m2", "m7", TRITONE, "M7");

    /** From easy to awkward. */
    static final List<String> ALL = Stream.of(Manner.values())
            .flatMap(manner -> SIZES.stream().map(size -> size + manner.suffix()))
            .toList();

    /** @throws Unreadable if it is no interval, or one that no scale holds */
    static IntervalSubject parse(String subject) {
        String text = subject.strip();
        int space = text.lastIndexOf(' ');
        String last = text.substring(space + 1).toLowerCase(Locale.ROOT);
        Manner manner = last.equals("down") ? Manner.DOWN : last.equals("together") ? Manner.TOGETHER : Manner.UP;
        boolean said = space > 0 && (manner != Manner.UP || last.equals("up"));
        String name = said ? text.substring(0, space).strip() : text;
        boolean below = manner == Manner.UP && !said && name.startsWith("-");
        return new IntervalSubject(size(name), below ? Manner.DOWN : manner);
    }

    private static Interval size(String name) {
        String bare = IntervalReading.bare(name, EXAMPLE);
        Interval size = IntervalReading.isTritone(bare) ? Interval.AUGMENTED_FOURTH : IntervalReading.read(bare);
        boolean inScale = size.number() > 1 && size.number() <= LARGEST && Placement.isInScale(size);
        if (!inScale) {
            throw Unreadable.because(name, 0, WHAT, "those of a scale are heard, from a second to a tenth", EXAMPLE);
        }
        return size.equals(Interval.DIMINISHED_FIFTH) ? Interval.AUGMENTED_FOURTH : size;
    }

    static boolean isTritone(Interval size) {
        return Math.abs(size.semitones()) == Interval.AUGMENTED_FOURTH.semitones();
    }

    /** {@code tritone}, or as an interval is written. */
    static String write(Interval size) {
        return size.equals(Interval.AUGMENTED_FOURTH) ? TRITONE : size.toString();
    }

    @Override
    public String toString() {
        return write(size) + manner.suffix();
    }
}
