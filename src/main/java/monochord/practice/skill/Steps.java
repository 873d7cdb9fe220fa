package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_THE_START;
import static monochord.practice.Misconception.MISSING_NOTE;
import static monochord.practice.Misconception.NOT_RAISED;
import static monochord.practice.Misconception.OTHER_SCALE;
import static monochord.practice.Misconception.WRONG_DEGREE_RAISED;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.answer.StepsRubric;
import monochord.practice.teaching.Walk;
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
    public String title() {
        return "Steps of a scale";
    }

    @Override
    public List<String> subjects(Key key) {
        return ScaleSubject.all(key);
    }

    @Override
    public Question question(Key key, String subject) {
        ScaleSubject about = ScaleSubject.parse(subject, key);
        Scale scale = about.scale();
        String prompt = "Walk up one octave of " + Say.scale(scale)
                + ". Which steps are they? W for a whole step, H for a half step, 3 for three half steps.";
        StepsRubric judge = new StepsRubric(scale, () -> slips(scale));
        return Question.of(new Topic(id(), about.text(), about.key()), Form.INTERVAL, prompt, judge, coaching(scale));
    }

    private static List<Slip<List<Integer>>> slips(Scale scale) {
        List<Integer> steps = scale.kind().steps();
        List<Slip<List<Integer>>> slips = new ArrayList<>();
        slips.add(new Slip<>(
                COUNTED_THE_START,
                steps.stream().map(step -> step + 1).toList(),
                () -> "You counted the key you stand on. It is nought; the first move is one."));
        slips.add(new Slip<>(
                MISSING_NOTE,
                steps.subList(0, steps.size() - 1),
                () -> "As far as it goes it is right. The last move, up to the octave, is missing."));
        for (ScaleKind other : ScaleKind.all()) {
            if (other.degrees().size() == steps.size() && !other.equals(scale.kind())) {
                slips.add(new Slip<>(reason(scale.kind(), other), other.steps(), () -> otherScale(scale, other)));
            }
        }
        return slips;
    }

    /** Which slip leads from one scale to another. */
    static Misconception reason(ScaleKind asked, ScaleKind given) {
        boolean raises = asked.equals(ScaleKind.HARMONIC_MINOR) || asked.equals(ScaleKind.MELODIC_MINOR);
        boolean harmonic = asked.equals(ScaleKind.HARMONIC_MINOR) && given.equals(ScaleKind.MELODIC_MINOR);
        return harmonic ? WRONG_DEGREE_RAISED : raises && given.equals(ScaleKind.MINOR) ? NOT_RAISED : OTHER_SCALE;
    }

    private static String otherScale(Scale scale, ScaleKind other) {
        List<NoteName> asked = scale.tones();
        List<NoteName> given = new Scale(scale.tonic(), other).tones();
        NoteName due =
                asked.stream().filter(note -> !given.contains(note)).findFirst().orElse(scale.tonic());
        return "Those are the steps of " + other + ". In " + Say.scale(scale) + " the "
                + Walk.ordinal(asked.indexOf(due) + 1) + " note is " + Say.note(due) + ".";
    }

    private static Coaching coaching(Scale scale) {
        List<Integer> steps = scale.kind().steps();
        List<NoteName> tones = scale.tones();
        String walk = "";
        for (int i = 0; i < steps.size(); i++) {
            walk += Say.note(tones.get(i)) + " " + name(steps.get(i)) + " ";
        }
        int last = steps.size() - 1;
        return Coaching.of(
                "Count moves, not keys: the key you stand on is nought.",
                "From " + Say.note(tones.get(0)) + " to " + Say.note(tones.get(1)) + " is " + Say.step(steps.get(0))
                        + ".",
                "All but the last: "
                        + String.join(
                                " ",
                                steps.subList(0, last).stream().map(Steps::name).toList()) + ".",
                walk + Say.note(scale.tonic()) + ". That is " + Say.scale(scale) + ", move by move.");
    }

    private static String name(int step) {
        return step == 1 ? "half" : step == 2 ? "whole" : "three-half-steps";
    }
}
