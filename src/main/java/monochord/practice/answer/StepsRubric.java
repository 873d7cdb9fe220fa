package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.StepReading;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Scale;

/** Judges the steps of a scale, in half steps from each degree to the next, the last one up to the octave. */
public final class StepsRubric extends Rubric<List<Integer>> {
    private static final int OCTAVE = 12;

    private final Scale scale;

    public StepsRubric(Scale scale, Supplier<List<ModelledError<List<Integer>>>> errors) {
        super(scale.kind().steps(), errors);
        this.scale = scale;
    }

    @Override
    String what() {
        return "a row of steps";
    }

    @Override
    String example() {
        return example("W H W W", "H W W H");
    }

    @Override
    List<Integer> read(String plain) {
        return StepReading.read(plain, example());
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
        return verdict(Grade.RIGHT, Phrase.sentence("Yes: {0}.", Phrase.typed(write(wanted()))));
    }

    @Override
    Verdict otherwise(List<Integer> given) {
        if (given.size() != wanted().size()) {
            boolean few = given.size() < wanted().size();
            return verdict(
                    Grade.WRONG,
                    few ? Misconception.MISSING_NOTE : Misconception.EXTRA_NOTE,
                    Phrase.sentence(
                                    "There are {0} moves up to the octave, and you made {1}.",
                                    Phrase.number(wanted().size()), Phrase.number(given.size()))
                            .then(move(firstOff(given))));
        }
        int sum = given.stream().mapToInt(Integer::intValue).sum();
        Phrase octave = sum == OCTAVE
                ? Phrase.NOTHING
                : Phrase.sentence("Together they must make twelve half steps; yours make {0}.", sum);
        return verdict(Grade.WRONG, move(firstOff(given)).then(octave));
    }

    private int firstOff(List<Integer> given) {
        int place = 0;
        while (place < wanted().size() - 1
                && place < given.size()
                && given.get(place).equals(wanted().get(place))) {
            place++;
        }
        return place;
    }

    private Phrase move(int place) {
        return Phrase.sentence(
                "From {0} to {1} is {2}.",
                scale.tones().get(place),
                scale.tones().get((place + 1) % scale.tones().size()),
                MusicWords.steps(wanted().get(place)));
    }

    @Override
    List<Phrase> helpFrom(List<Integer> given) {
        int place = firstOff(given);
        Phrase begun = place == 0
                ? Phrase.sentence("Look at the first move.")
                : Phrase.counted(
                        place,
                        "The first move is right. Look at the next.",
                        "The first {0} moves are right. Look at the next.",
                        Phrase.number(place));
        int up = (place + 1) % scale.tones().size();
        return List.of(
                begun,
                Phrase.sentence(
                        "It goes from {0} to {1}.",
                        scale.tones().get(place), scale.tones().get(up)),
                Phrase.sentence(
                        "Count the keys you pass on the way from {0}: none makes a half step, one a whole step.",
                        scale.tones().get(place)));
    }
}
