package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Pitch;

/**
 * What happens in a way to play a progression, next to the plain root-position version of the same chords.
 *
 * @param plain the same chords as {@link Plain} plays them
 * @param changes one for each change of chord
 */
public record Explanation(Way way, Tally tally, List<Voicing> plain, Tally plainTally, List<Change> changes) {
    /**
     * One change of chord.
     *
     * @param held the pitches that stay, bottom to top, as the second chord spells them
     * @param left the voices of the left hand that do not stay, bottom to top
     * @param right those of the right hand
     * @param tally what is counted at this change
     * @param plainTally the same in the plain version
     */
    public record Change(
            Chord from, Chord to, List<Pitch> held, List<Move> left, List<Move> right, Tally tally, Tally plainTally) {
        public Change {
            held = List.copyOf(held);
            left = List.copyOf(left);
            right = List.copyOf(right);
        }
    }

    /** A voice that goes from one key to another. */
    public record Move(Pitch from, Pitch to) {
        /** Positive upwards. */
        public int halfSteps() {
            return to.midiNumber() - from.midiNumber();
        }
    }

    public Explanation {
        plain = List.copyOf(plain);
        changes = List.copyOf(changes);
    }

    public static Explanation of(Way way) {
        List<Voicing> plain = Plain.of(way.task().chords());
        List<Change> changes = new ArrayList<>();
        for (int i = 1; i < way.voicings().size(); i++) {
            changes.add(change(way, plain, i));
        }
        return new Explanation(way, way.tally(), plain, Tally.of(plain), changes);
    }

    private static Change change(Way way, List<Voicing> plain, int i) {
        Voicing from = way.voicings().get(i - 1);
        Voicing to = way.voicings().get(i);
        List<Join> joins = Join.of(from.pitches(), to.pitches());
        List<Pitch> held = joins.stream()
                .filter(join -> join.halfSteps() == 0)
                .map(Join::to)
                .toList();
        List<Join> left =
                joins.stream().filter(join -> to.left().contains(join.to())).toList();
        List<Join> right =
                joins.stream().filter(join -> to.right().contains(join.to())).toList();
        return new Change(
                way.task().chords().get(i - 1),
                way.task().chords().get(i),
                held,
                moves(left),
                moves(right),
                Tally.between(from, to),
                Tally.between(plain.get(i - 1), plain.get(i)));
    }

    private static List<Move> moves(List<Join> joins) {
        return joins.stream()
                .filter(join -> join.halfSteps() != 0)
                .map(join -> new Move(join.from(), join.to()))
                .toList();
    }
}
