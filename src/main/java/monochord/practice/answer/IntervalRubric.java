package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.IntervalReading;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/** Judges the name of an interval: {@code m3}, {@code minor third}, {@code min 3rd}. */
public final class IntervalRubric extends Rubric<Interval> {
    private final String way;

    /** @param way a sentence that points the way and stops short of the name */
    public IntervalRubric(Interval wanted, String way, Supplier<List<Slip<Interval>>> slips) {
        super(wanted, slips);
        this.way = way;
    }

    @Override
    Interval read(String text) {
        String example = example("minor third", "P5");
        String bare = IntervalReading.bare(text, example);
        if (IntervalReading.isTritone(bare)) {
            throw Unreadable.because(
                    text, 0, "one interval", "it may be an augmented fourth or a diminished fifth", example);
        }
        return IntervalReading.read(bare);
    }

    @Override
    String write(Interval answer) {
        return answer.toString();
    }

    @Override
    boolean same(Interval one, Interval other) {
        return one.equals(other);
    }

    @Override
    Verdict accept(Interval given) {
        return verdict(Grade.RIGHT, "Yes, " + Say.interval(given) + ": " + Say.halfSteps(given.semitones()) + ".");
    }

    @Override
    boolean soundsRight(Interval given) {
        return given.semitones() == wanted().semitones();
    }

    @Override
    Grade grade(Interval given) {
        return given.number() == wanted().number() ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(Interval given) {
        if (soundsRight(given)) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    "It sounds like that, and the letters say otherwise. " + way);
        } else if (given.number() == wanted().number()) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.WRONG_QUALITY,
                    "The number is right. " + Say.interval(given).replaceFirst("^a", "A") + " would be "
                            + Say.halfSteps(given.semitones()) + "; here there are " + Say.count(wanted().semitones())
                            + ".");
        }
        return verdict(Grade.WRONG, Misconception.WRONG_DEGREE, way);
    }
}
