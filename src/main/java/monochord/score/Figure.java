package monochord.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * One voicing, struck in one way or another; always as long as the voicing.
 *
 * @param start beats from the first bar line
 */
record Figure(TimedVoicing voicing, Beats start, BarGrid metre) {
    private static final Beats EIGHTH = Beats.of(1, 2);
    /** From one key to the next in a roll: 60 ms at a walking pace. */
    private static final Beats ROLL = Beats.of(1, 12);

    private List<Pitch> left() {
        return voicing.hands().left();
    }

    private List<Pitch> right() {
        return voicing.hands().right();
    }

    private Beats beats() {
        return voicing.beats();
    }

    Score block() {
        return hands(held(left()), held(right()));
    }

    private static Score hands(Score left, Score right) {
        return left.by(Hand.LEFT).with(right.by(Hand.RIGHT));
    }

    private Score held(List<Pitch> keys) {
        return keys.isEmpty() ? Score.rest(beats()) : Score.together(keys, beats());
    }

    Score broken() {
        return right().isEmpty() ? hands(upAndDown(left()), held(right())) : hands(held(left()), upAndDown(right()));
    }

    private Score upAndDown(List<Pitch> keys) {
        if (keys.size() < 2) {
            return held(keys);
        }
        int turn = 2 * keys.size() - 2;
        return inTurn(EIGHTH, (i, length) -> {
            int at = i % turn;
            return Score.note(keys.get(Math.min(at, turn - at)), length);
        });
    }

    private interface Strike {
        Score at(int number, Beats length);
    }

    /** Strokes of one length until the voicing is over; the last may be shorter. */
    private Score inTurn(Beats each, Strike stroke) {
        List<Score> strokes = new ArrayList<>();
        Beats now = Beats.ZERO;
        while (now.compareTo(beats()) < 0) {
            Beats left = beats().minus(now);
            Beats length = left.compareTo(each) < 0 ? left : each;
            strokes.add(stroke.at(strokes.size(), length));
            now = now.plus(length);
        }
        return new Score.InTurn(strokes);
    }

    Score rolled() {
        int keys = left().size() + right().size();
        Beats half = beats().dividedInto(2L * Math.max(1, keys));
        Beats step = half.compareTo(ROLL) < 0 ? half : ROLL;
        return hands(rolled(left(), step, 0), rolled(right(), step, left().size()));
    }

    private Score rolled(List<Pitch> keys, Beats step, int before) {
        return keys.isEmpty()
                ? Score.rest(beats())
                : new Score.Together(IntStream.range(0, keys.size())
                        .mapToObj(i -> late(keys.get(i), step.times((long) before + i)))
                        .toList());
    }

    private Score late(Pitch key, Beats wait) {
        Score note = Score.note(key, beats().minus(wait));
        return wait.isZero() ? note : Score.rest(wait).then(note);
    }

    Score bassAndChord() {
        List<Pitch> all = Stream.concat(left().stream(), right().stream()).toList();
        if (all.size() < 2) {
            return block();
        }
        Beats each = beats().compareTo(Beats.of(2)) < 0 ? beats().dividedInto(2) : Beats.ONE;
        Hand low = left().isEmpty() ? Hand.RIGHT : Hand.LEFT;
        List<Pitch> inLeft = left().isEmpty() ? List.of() : left().subList(1, left().size());
        List<Pitch> inRight = left().isEmpty() ? right().subList(1, right().size()) : right();
        return inTurn(
                each,
                (i, length) -> isStrong(i, each)
                        ? Score.note(all.get(0), length).by(low)
                        : hands(briefly(inLeft, length), briefly(inRight, length)));
    }

    /** In bars of two or four the odd beats are strong, in others the first alone; where a chord begins there is a bass. */
    private boolean isStrong(int stroke, Beats each) {
        Beats within = metre.within(start.plus(each.times(stroke)));
        boolean even = metre.bar().denominator() == 1 && metre.bar().numerator() % 2 == 0;
        boolean odd = within.denominator() == 1 && within.numerator() % 2 == 0;
        return stroke == 0 || within.isZero() || even && odd && each.equals(Beats.ONE);
    }

    /** Half of the time sounding, half silent. */
    private static Score briefly(List<Pitch> keys, Beats length) {
        Beats half = length.dividedInto(2);
        return keys.isEmpty() ? Score.rest(length) : Score.together(keys, half).then(Score.rest(half));
    }

    Score pulse() {
        return right().isEmpty()
                ? hands(struckAgain(left()), held(right()))
                : hands(held(left()), struckAgain(right()));
    }

    private Score struckAgain(List<Pitch> keys) {
        return keys.isEmpty() ? held(keys) : inTurn(Beats.ONE, (i, length) -> Score.together(keys, length));
    }
}
