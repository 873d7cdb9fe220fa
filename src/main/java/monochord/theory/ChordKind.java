package monochord.theory;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import monochord.theory.note.Cursor;
import monochord.theory.note.Interval;
import monochord.theory.note.Notated;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.ToneSet;
import monochord.theory.note.Unreadable;

/**
 * A kind of chord, such as a minor seventh chord: a set of points on the line of fifths around its root.
 *
 * <p>The set says all. Where each tone stands above the root follows from the set: a second beside a third is a ninth, a
 * fourth in place of a third is a suspension, a sixth above a seventh is a thirteenth. So does the name: it is the
 * customary kind that needs the fewest changes, with the changes behind it. Two kinds are equal when their tones are
 * spelled alike.
 *
 * <p>Text form: a chord symbol without its root, such as {@code m7b5} or {@code 13#11}, empty for a major triad. {@link
 * #parse} reads all that {@link #toString} writes, and every other customary writing: see {@link Chord}.
 *
 * <p>An eleventh or thirteenth chord holds its whole stack of thirds; players leave notes out (the third of a dominant
 * eleventh, the eleventh of a thirteenth: common practice, no source), and such a chord is written {@code 13(no11)}.
 */
public final class ChordKind implements Notated {
    private static final int MOST_KEPT = 1 << 14;
    private static final Map<Long, Optional<ChordKind>> KINDS = new ConcurrentHashMap<>();

    public static final ChordKind MAJOR = parse("");
    public static final ChordKind MINOR = parse("m");
    public static final ChordKind DIMINISHED = parse("dim");
    public static final ChordKind AUGMENTED = parse("aug");
    public static final ChordKind DOMINANT_SEVENTH = parse("7");
    public static final ChordKind MAJOR_SEVENTH = parse("maj7");
    public static final ChordKind MINOR_SEVENTH = parse("m7");
    public static final ChordKind HALF_DIMINISHED = parse("m7b5");
    public static final ChordKind DIMINISHED_SEVENTH = parse("dim7");

    private final long tones;
    private final List<Interval> intervals;
    private final TriadQuality quality;
    private final ChordName name;

    private ChordKind(long tones, ChordName name) {
        this.tones = tones;
        this.name = name;
        this.quality = TriadQuality.of(tones);
        this.intervals = IntStream.of(ToneSet.fifths(tones))
                .mapToObj(fifths -> stacked(tones, fifths))
                .sorted()
                .toList();
    }

    /** @throws Unreadable if the text is not the suffix of a chord symbol */
    public static ChordKind parse(String text) {
        Cursor cursor = new Cursor(text, "a kind of chord", "m7b5");
        return ChordSuffix.read(cursor, text.length());
    }

    /** The kind with these tones above {@code root}, or none if no chord symbol is written for them. */
    public static Optional<ChordKind> of(NoteName root, List<NoteName> tones) {
        return ofTones(ToneSet.seenFrom(root, tones));
    }

    static Optional<ChordKind> ofTones(long tones) {
        Optional<ChordKind> known = KINDS.get(tones);
        if (known == null) {
            known = ChordName.of(tones).map(name -> new ChordKind(tones, name));
            if (KINDS.size() < MOST_KEPT) {
                KINDS.put(tones, known);
            }
        }
        return known;
    }

    /** Where a tone stands in the stack: beside a third a second is a ninth, above a seventh a sixth is a thirteenth. */
    private static Interval stacked(long tones, int fifths) {
        Interval near = Interval.simple(fifths);
        return isExtension(tones, near) ? near.plus(Interval.OCTAVE) : near;
    }

    private static boolean isExtension(long tones, Interval near) {
        boolean third = hasAny(tones, 3);
        boolean seventh = hasAny(tones, 7);
        return switch (near.number()) {
            case 2 -> third || near.alteration() != 0 || (tones & ToneSet.tone(4, 0)) != 0;
            case 4 -> third && (seventh || near.alteration() > 0) && (tones & ToneSet.tone(6, 1)) == 0;
            case 6 -> seventh;
            default -> false;
        };
    }

    private static boolean hasAny(long tones, int number) {
        return (tones & (ToneSet.tone(number, 0) | ToneSet.tone(number, -1) | ToneSet.tone(number, -2))) != 0;
    }

    /** The intervals above the root from the bottom up, beginning with the unison. */
    public List<Interval> intervals() {
        return intervals;
    }

    public TriadQuality quality() {
        return quality;
    }

    /** The interval of that number above the root, if there is exactly one: 3, 5, 7, 9 … */
    public Optional<Interval> interval(int number) {
        List<Interval> found = intervals.stream()
                .filter(interval -> interval.number() == number)
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    public boolean holds(Interval interval) {
        return (tones & ToneSet.bit(interval.fifths())) != 0;
    }

    /** The third and fifth alone where the chord has both, as in the seventh chord on a degree. */
    public ChordKind triad() {
        return switch (quality) {
            case MAJOR -> MAJOR;
            case MINOR -> MINOR;
            case DIMINISHED -> DIMINISHED;
            case AUGMENTED -> AUGMENTED;
            default -> this;
        };
    }

    /** This kind with one tone more. */
    public Optional<ChordKind> with(Interval interval) {
        return ofTones(tones | ToneSet.bit(interval.fifths()));
    }

    /** This kind with one tone less. */
    public Optional<ChordKind> without(Interval interval) {
        return ofTones(tones & ~ToneSet.bit(interval.fifths()));
    }

    long tones() {
        return tones;
    }

    /** How far the name is from a customary kind: 0 for {@code m7}, more for each alteration, addition or omission. */
    int oddity() {
        return name.oddity();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ChordKind that && that.tones == tones;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(tones);
    }

    @Override
    public String write(Signs signs) {
        return signs.dress(name.suffix());
    }

    @Override
    public String toString() {
        return name.suffix();
    }
}
