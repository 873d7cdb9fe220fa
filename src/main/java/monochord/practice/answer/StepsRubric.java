package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.StepReading;
import monochord.theory.Scale;

/** Judges the steps of a scale, in half steps from each degree to the next, the last one up to the octave. */
public final class StepsRubric extends Rubric<List<Integer>> {
    private final Scale scale;

    public StepsRubric(Scale scale, Supplier<List<Slip<List<Integer>>>> slips) {
        super(scale.kind().steps(), slips);
        this.scale = scale;
    }

    @Override
    List<Integer> read(String text) {
        String example = example("W H W W", "H W W H");
        return StepReading.read(AnswerText.plain(text, "a row of steps", example), example);
    }

    @Override
    String write(List<Integer> answer) {
        return answer.stream().map(StepsRubric::letter).collect(Collectors.joining(" "));
    }

    private static String letter(int halfSteps) {
        return halfSteps == 1 ? "H" : halfSteps == 2 ? "W" : Integer.toString(halfSteps);
    }

    @Override
    boolean same(List<Integer> one, List<Integer> other) {
        return one.equals(other);
    }

    @Override
    Verdict accept(List<Integer> given) {
        return verdict(Grade.RIGHT, "Yes: " + write(wanted()) + ".");
    }

    @Override
    Verdict otherwise(List<Integer> given) {
        int sum = given.stream().mapToInt(Integer::intValue).sum();
        if (given.size() != wanted().size()) {
            boolean few = given.size() < wanted().size();
            return verdict(
                    Grade.WRONG,
                    few ? Misconception.MISSING_NOTE : Misconception.EXTRA_NOTE,
                    "There are " + Say.count(wanted().size()) + " moves up to the octave, and you made "
                            + Say.count(given.size()) + ". " + firstOff(given));
        }
        String octave = sum == 12 ? "" : " Together they must make twelve half steps; yours make " + sum + ".";
        return verdict(Grade.WRONG, firstOff(given) + octave);
    }

    private String firstOff(List<Integer> given) {
        int place = 0;
        while (place < wanted().size() - 1
                && place < given.size()
                && given.get(place).equals(wanted().get(place))) {
            place++;
        }
        String from = Say.note(scale.tones().get(place));
        String to = Say.note(scale.tones().get((place + 1) % scale.tones().size()));
        int size = wanted().get(place);
        return "From " + from + " to " + to + " is " + (size == 2 ? "a whole step" : Say.halfSteps(size)) + ".";
    }
}
