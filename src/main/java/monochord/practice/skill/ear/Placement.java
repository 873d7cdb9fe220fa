package monochord.practice.skill.ear;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** The two notes of an interval where they lie, both of the key. */
record Placement(Pitch lower, Pitch upper) {
    private static final Pitch LOWEST = Pitch.parse("D3");
    private static final Pitch HIGHEST = Pitch.parse("C6");
    private static final Key ANY = Key.major(NoteName.C);

    /** Whether two notes of a scale lie so far apart. */
    static boolean isInScale(Interval size) {
        return !lowerNotes(size, ANY).isEmpty();
    }

    private static List<NoteName> lowerNotes(Interval size, Key key) {
        return IntStream.rangeClosed(1, 7)
                .mapToObj(key::note)
                .filter(note -> key.holds(note.plus(size)))
                .toList();
    }

    /** Anywhere in the key, not so low that it blurs; a tritone as a fourth or as a fifth. */
    static Placement of(Interval size, Key key, Chance chance) {
        Interval spelled = IntervalSubject.isTritone(size)
                ? chance.of(List.of(Interval.AUGMENTED_FOURTH, Interval.DIMINISHED_FIFTH))
                : size;
        Pitch lowest = Pitch.atOrAbove(chance.of(lowerNotes(spelled, key)), LOWEST);
        Pitch lower = chance.of(Stream.iterate(
                        lowest,
                        pitch -> pitch.plus(spelled).midiNumber() <= HIGHEST.midiNumber(),
                        pitch -> pitch.plus(Interval.OCTAVE))
                .toList());
        return new Placement(lower, lower.plus(spelled));
    }

    Interval interval() {
        return lower.to(upper);
    }

    /** The same place with another interval in it: from below, or from above where one sang downwards. */
    Placement with(Interval size, boolean fromAbove) {
        return fromAbove ? new Placement(upper.minus(size), upper) : new Placement(lower, lower.plus(size));
    }
}
