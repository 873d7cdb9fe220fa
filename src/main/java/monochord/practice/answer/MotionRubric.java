package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import monochord.harmony.motion.Motion;
import monochord.practice.Grade;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.theory.note.Unreadable;

/** Judges the name of a motion: {@code contrary}, {@code similar motion}. */
public final class MotionRubric extends Rubric<Motion> {
    private static final Map<String, Motion> NAMES = Map.of(
            "contrary", Motion.CONTRARY,
            "opposite", Motion.CONTRARY,
            "oblique", Motion.OBLIQUE,
            "similar", Motion.SIMILAR,
            "direct", Motion.SIMILAR,
            "parallel", Motion.PARALLEL,
            "still", Motion.STILL);

    private final String reason;
    private final String way;

    /** @param reason one sentence or more that lead to the motion */
    public MotionRubric(Motion wanted, String reason, String way, Supplier<List<Slip<Motion>>> slips) {
        super(wanted, slips);
        this.reason = reason;
        this.way = way;
    }

    @Override
    Motion read(String text) {
        String example = example("contrary", "oblique");
        String plain = AnswerText.plain(text, "a kind of motion", example).toLowerCase(Locale.ROOT);
        Motion motion = NAMES.get(plain.replaceFirst("^(?:in|by|a) +", "").replaceFirst(" *motion$", ""));
        if (motion == null) {
            throw Unreadable.because(
                    plain, 0, "a kind of motion", "say contrary, oblique, similar, parallel or still", example);
        }
        return motion;
    }

    @Override
    String write(Motion answer) {
        return answer.toString();
    }

    @Override
    boolean same(Motion one, Motion other) {
        return one == other;
    }

    @Override
    Grade grade(Motion given) {
        return given.isSameWay() && wanted().isSameWay() ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict accept(Motion given) {
        return verdict(Grade.RIGHT, "Yes. " + reason);
    }

    @Override
    Verdict otherwise(Motion given) {
        return verdict(grade(given), way);
    }
}
