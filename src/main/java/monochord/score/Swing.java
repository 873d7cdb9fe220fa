package monochord.score;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.Beats;

/**
 * Swung eighths: what falls in the first half of a beat is stretched to two thirds of it, the rest pressed into the last,
 * so that an off-beat eighth comes a third of a beat before the next beat. Common practice, no source.
 */
public final class Swing {
    private static final Beats LONG = Beats.of(2, 3);
    private static final Beats HALF = Beats.of(1, 2);

    /** Beats from a beat to the beginning of the score, less than one. */
    private final Beats ahead;

    private Swing(Beats ahead) {
        this.ahead = ahead;
    }

    /** @param pickup beats before the first full bar: the beats are counted from there */
    public static Score of(Score score, Beats pickup) {
        Beats part = pickup.minus(Beats.of(pickup.numerator() / pickup.denominator()));
        return new Swing(part.isZero() ? part : Beats.ONE.minus(part)).from(Beats.ZERO, score);
    }

    private Score from(Beats start, Score score) {
        if (score instanceof Score.Note note) {
            return Score.note(note.pitch(), length(start, note.beats()));
        } else if (score instanceof Score.Rest rest) {
            return Score.rest(length(start, rest.beats()));
        } else if (score instanceof Score.InTurn line) {
            return inTurn(start, line);
        } else if (score instanceof Score.Together chord) {
            return new Score.Together(
                    chord.parts().stream().map(part -> from(start, part)).toList());
        } else if (score instanceof Score.ByHand played) {
            return from(start, played.part()).by(played.hand());
        } else if (score instanceof Score.Labelled labelled) {
            return from(start, labelled.part()).labelled(labelled.label());
        }
        return from(start, ((Score.Pedalled) score).part()).pedalled();
    }

    private Score inTurn(Beats start, Score.InTurn line) {
        Beats now = start;
        List<Score> parts = new ArrayList<>();
        for (Score part : line.parts()) {
            parts.add(from(now, part));
            now = now.plus(part.beats());
        }
        return new Score.InTurn(parts);
    }

    private Beats length(Beats start, Beats beats) {
        return swung(start.plus(beats)).minus(swung(start));
    }

    /** Where a time lies when the beats before it swing; the difference of two such times is what counts. */
    private Beats swung(Beats time) {
        Beats counted = time.plus(ahead);
        Beats whole = Beats.of(counted.numerator() / counted.denominator());
        Beats within = counted.minus(whole);
        return within.compareTo(HALF) <= 0
                ? whole.plus(within.times(4).dividedInto(3))
                : whole.plus(LONG).plus(within.minus(HALF).times(2).dividedInto(3));
    }
}
