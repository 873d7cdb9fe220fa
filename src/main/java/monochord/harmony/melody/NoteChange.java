package monochord.harmony.melody;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;

/**
 * Another note in place of one that clashes.
 *
 * <p>Cost: {@code 2 · half steps moved + 1 if the letter changes + 1 if it is a colour and no tone of the chord + 1 if
 * that colour is not in the key}. A tone of the chord from outside the key costs nothing more: it is what the chord
 * brings. Common practice, no source.
 *
 * @param cost from 2; the lower the nearer to the tune as it was
 */
public record NoteChange(Pitch from, Pitch to, int cost) {
    private static final int HALF_STEP = 2;
    private static final List<Interval> NEAR = Stream.of(
                    new Interval(7, -4),
                    Interval.MINOR_SECOND,
                    Interval.MAJOR_SECOND,
                    new Interval(9, -5),
                    Interval.MINOR_THIRD)
            .flatMap(up -> Stream.of(up.reversed(), up))
            .toList();

    /** The nearest note that can be rested on over the chord, or none within a minor third. */
    public static Optional<NoteChange> nearest(Pitch from, Chord chord, Key key) {
        return all(from, chord, key).stream().findFirst();
    }

    /** Every note within a minor third that can be rested on over the chord, the nearest first. */
    public static List<NoteChange> all(Pitch from, Chord chord, Key key) {
        return NEAR.stream()
                .filter(move -> isInReach(from, move))
                .map(from::plus)
                .filter(to -> fits(to, chord))
                .map(to -> new NoteChange(from, to, cost(from, to, chord, key)))
                .sorted(Comparator.comparingInt(NoteChange::cost))
                .toList();
    }

    private static boolean isInReach(Pitch from, Interval move) {
        int position = from.staffPosition() + move.staffSteps();
        return position >= -7 && position < 77 && Math.abs(from.name().fifths() + move.fifths()) < 90;
    }

    private static boolean fits(Pitch to, Chord chord) {
        return switch (Standing.of(to.name(), chord)) {
            case CHORD_TONE -> chord.holds(to.name());
            case COLOUR -> true;
            default -> false;
        };
    }

    private static int cost(Pitch from, Pitch to, Chord chord, Key key) {
        int moved = HALF_STEP * Math.abs(to.midiNumber() - from.midiNumber());
        int letter = to.staffPosition() == from.staffPosition() ? 0 : 1;
        int colour = chord.holds(to.name()) ? 0 : key.holds(to.name()) ? 1 : 2;
        return moved + letter + colour;
    }
}
