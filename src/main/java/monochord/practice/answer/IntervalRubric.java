package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.IntervalReading;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/** Judges the name of an interval: {@code m3}, {@code minor third}, {@code min 3rd}. */
public final class IntervalRubric extends Rubric<Interval> {
    private final Phrase way;

    /** @param way a sentence that points the way and stops short of the name */
    public IntervalRubric(Interval wanted, Phrase way, Supplier<List<ModelledError<Interval>>> errors) {
        super(wanted, errors);
        this.way = way;
    }

    @Override
    String what() {
        return "an interval";
    }

    @Override
    String example() {
        return example("minor third", "P5");
    }

    @Override
    Interval read(String plain) {
        if (IntervalReading.isTritone(plain)) {
            throw Unreadable.because(
                    plain, 0, "one interval", "it may be an augmented fourth or a diminished fifth", example());
        }
        return IntervalReading.read(plain);
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
        return verdict(
                Grade.RIGHT,
                Phrase.sentence("Yes, {0}: {1}.", Phrase.one(given), MusicWords.halfStepsInWords(given.semitones())));
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
                    Phrase.sentence("It sounds like that, and the letters say otherwise.")
                            .then(way));
        } else if (given.number() == wanted().number()) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.WRONG_QUALITY,
                    Phrase.sentence("The number is right.")
                            .then(Phrase.sentence(
                                    "{0} would be {1}; here there are {2}.",
                                    Phrase.one(given),
                                    MusicWords.halfStepsInWords(given.semitones()),
                                    Phrase.number(wanted().semitones()))));
        }
        return verdict(Grade.WRONG, Misconception.WRONG_DEGREE, way);
    }

    @Override
    List<Phrase> helpFrom(Interval given) {
        if (given.number() == wanted().number()) {
            boolean wide = given.semitones() > wanted().semitones();
            return List.of(
                    Phrase.sentence("The number is right. Now count the half steps, the lower note as nought."),
                    wide
                            ? Phrase.sentence("{0} is wider than that.", Phrase.one(given))
                            : Phrase.sentence("{0} is narrower than that.", Phrase.one(given)),
                    Phrase.sentence(
                            "{0} has {1}; how many more or fewer are there here?",
                            Phrase.one(given), MusicWords.halfStepsInWords(given.semitones())));
        }
        return soundsRight(given)
                ? List.of(
                        Phrase.sentence("The half steps are right. Now count the letters, both ends included."),
                        Phrase.sentence("{0} would be {1} letters.", Phrase.one(given), Phrase.number(given.number())),
                        way)
                : List.of();
    }
}
