package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.harmony.motion.Motion;
import monochord.practice.Grade;
import monochord.practice.Verdict;
import monochord.practice.reading.OneOfWords;
import monochord.text.Phrase;
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

    /** As somebody says it who has no word for it. */
    private static final Map<String, Motion> WORDS = Map.ofEntries(
            Map.entry("contrary", Motion.CONTRARY),
            Map.entry("opposite", Motion.CONTRARY),
            Map.entry("different directions", Motion.CONTRARY),
            Map.entry("apart", Motion.CONTRARY),
            Map.entry("towards each other", Motion.CONTRARY),
            Map.entry("oblique", Motion.OBLIQUE),
            Map.entry("similar", Motion.SIMILAR),
            Map.entry("parallel", Motion.PARALLEL),
            Map.entry("still", Motion.STILL),
            Map.entry("both stay", Motion.STILL),
            Map.entry("nothing moves", Motion.STILL));

    private static final Pattern DECORATION = Pattern.compile("^\\s*(?:(?:in|by|a) +)?| *motion$");

    private final Phrase reason;
    private final Phrase way;
    private final Function<Motion, List<Phrase>> help;

    /**
     * @param reason one sentence or more that lead to the motion
     * @param help how to go on from each wrong answer
     */
    public MotionRubric(
            Motion wanted,
            Phrase reason,
            Phrase way,
            Function<Motion, List<Phrase>> help,
            Supplier<List<ModelledError<Motion>>> errors) {
        super(wanted, errors);
        this.reason = reason;
        this.way = way;
        this.help = help;
    }

    @Override
    String what() {
        return "a kind of motion";
    }

    @Override
    String example() {
        return example("contrary", "oblique");
    }

    @Override
    Motion read(String plain) {
        String name = DECORATION.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll("");
        Motion motion = NAMES.get(name.strip());
        if (motion == null) {
            return OneOfWords.in(WORDS, plain.toLowerCase(Locale.ROOT))
                    .orElseThrow(() -> Unreadable.because(
                            plain, 0, what(), "say contrary, oblique, similar, parallel or still", example()));
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
        return verdict(Grade.RIGHT, Phrase.sentence("Yes.").then(reason));
    }

    @Override
    Verdict otherwise(Motion given) {
        return verdict(grade(given), way);
    }

    @Override
    List<Phrase> helpFrom(Motion given) {
        return help.apply(given);
    }
}
