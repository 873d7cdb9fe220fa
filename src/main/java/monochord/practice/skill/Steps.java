package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_THE_START;
import static monochord.practice.Misconception.MISSING_NOTE;
import static monochord.practice.Misconception.NOT_RAISED;
import static monochord.practice.Misconception.OTHER_SCALE;
import static monochord.practice.Misconception.WRONG_DEGREE_RAISED;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.StepsRubric;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.NoteName;

/** The whole and half steps of a scale. */
final class Steps implements Skill {
    @Override
    public String id() {
        return "steps";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Steps of a scale");
    }

    @Override
    public List<String> subjects(Key key) {
        return ScaleSubject.all(key);
    }

    /** The major scale; the others come later in the first book. */
    @Override
    public int firstSubjects() {
        return 1;
    }

    @Override
    public Question question(Key key, String subject) {
        ScaleSubject about = ScaleSubject.parse(subject, key);
        Scale scale = about.scale();
        Phrase prompt = Phrase.sentence(
                "Walk up one octave of {0}. Which steps are they? W for a whole step, H for a half step, 3 for three half steps.",
                scale);
        StepsRubric judge = new StepsRubric(scale, () -> errors(scale));
        return Question.of(
                new Topic(id(), about.text(), about.key()), AnswerForm.INTERVAL, prompt, judge, coaching(scale));
    }

    private static List<ModelledError<List<Integer>>> errors(Scale scale) {
        List<Integer> steps = scale.kind().steps();
        List<ModelledError<List<Integer>>> errors = new ArrayList<>();
        errors.add(new ModelledError<>(
                COUNTED_THE_START,
                steps.stream().map(step -> step + 1).toList(),
                () -> Phrase.sentence("You counted the key you stand on. It is nought; the first move is one.")));
        errors.add(new ModelledError<>(
                MISSING_NOTE,
                steps.subList(0, steps.size() - 1),
                () -> Phrase.sentence("As far as it goes it is right. The last move, up to the octave, is missing.")));
        for (ScaleKind other : ScaleKind.all()) {
            if (other.degrees().size() == steps.size() && !other.equals(scale.kind())) {
                errors.add(new ModelledError<>(
                        reason(scale.kind(), other), other.steps(), () -> otherScale(scale, other)));
            }
        }
        return errors;
    }

    /** Which error leads from one scale to another. */
    static Misconception reason(ScaleKind asked, ScaleKind given) {
        boolean raises = asked.equals(ScaleKind.HARMONIC_MINOR) || asked.equals(ScaleKind.MELODIC_MINOR);
        boolean harmonic = asked.equals(ScaleKind.HARMONIC_MINOR) && given.equals(ScaleKind.MELODIC_MINOR);
        return harmonic ? WRONG_DEGREE_RAISED : raises && given.equals(ScaleKind.MINOR) ? NOT_RAISED : OTHER_SCALE;
    }

    private static Phrase otherScale(Scale scale, ScaleKind other) {
        List<NoteName> asked = scale.tones();
        List<NoteName> given = new Scale(scale.tonic(), other).tones();
        NoteName due =
                asked.stream().filter(note -> !given.contains(note)).findFirst().orElse(scale.tonic());
        return Phrase.sentence(
                "Those are the steps of the {0} scale. In {1} the {2} note is {3}.",
                Phrase.kind(other), scale, MusicWords.ordinal(asked.indexOf(due) + 1), due);
    }

    private static Coaching coaching(Scale scale) {
        List<Integer> steps = scale.kind().steps();
        List<NoteName> tones = scale.tones();
        List<Object> walk = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            walk.add(tones.get(i));
            walk.add(name(steps.get(i)));
        }
        walk.add(scale.tonic());
        int last = steps.size() - 1;
        return Coaching.of(
                Phrase.sentence("Count moves, not keys: the key you stand on is nought."),
                Phrase.sentence("From {0} to {1} is {2}.", tones.get(0), tones.get(1), MusicWords.steps(steps.get(0))),
                Phrase.sentence(
                        "All but the last: {0}.",
                        Phrase.row(
                                steps.subList(0, last).stream().map(Steps::name).toList())),
                Phrase.sentence("{0}. That is {1}, move by move.", Phrase.row(walk), scale));
    }

    private static Phrase name(int step) {
        return switch (step) {
            case 1 -> Phrase.of("half");
            case 2 -> Phrase.of("whole");
            default -> Phrase.of("three-half-steps");
        };
    }
}
