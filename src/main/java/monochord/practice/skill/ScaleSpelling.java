package monochord.practice.skill;

import static monochord.practice.Misconception.RELATIVE_FOR_PARALLEL;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.ScaleRubric;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

/** A scale spelled on its tonic. */
final class ScaleSpelling implements Skill {
    private static final List<ScaleKind> MINORS =
            List.of(ScaleKind.MINOR, ScaleKind.HARMONIC_MINOR, ScaleKind.MELODIC_MINOR, ScaleKind.MAJOR);

    @Override
    public String id() {
        return "scale-spelling";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Spelling scales");
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
        Phrase prompt = scale.kind().equals(ScaleKind.MELODIC_MINOR)
                ? Phrase.sentence("Spell {0} going up, from {1}.", scale, scale.tonic())
                : Phrase.sentence("Spell {0}, from {1}.", scale, scale.tonic());
        ScaleRubric judge = new ScaleRubric(scale, () -> errors(scale));
        return Question.of(
                new Topic(id(), about.text(), about.key()), AnswerForm.NOTES, prompt, judge, coaching(scale));
    }

    private static List<ModelledError<List<NoteName>>> errors(Scale scale) {
        List<ModelledError<List<NoteName>>> errors = new ArrayList<>();
        boolean major = scale.kind().equals(ScaleKind.MAJOR);
        if (major) {
            errors.add(forgotten(scale));
        }
        if (MINORS.contains(scale.kind())) {
            MINORS.stream()
                    .filter(kind -> !kind.equals(scale.kind()))
                    .forEach(kind -> errors.add(formOfMinor(scale, kind)));
        }
        relative(scale).ifPresent(errors::add);
        if (!major) {
            errors.add(forgotten(scale));
        }
        return errors;
    }

    private static ModelledError<List<NoteName>> forgotten(Scale scale) {
        return new ModelledError<>(
                SIGNATURE_FORGOTTEN,
                bare(scale),
                () -> Phrase.sentence("Those are the letters; the accidentals are still to come.")
                        .then(firstAccidental(scale)));
    }

    private static ModelledError<List<NoteName>> formOfMinor(Scale scale, ScaleKind given) {
        Misconception reason = Steps.reason(scale.kind(), given);
        List<NoteName> tones = new Scale(scale.tonic(), given).tones();
        NoteName due = scale.tones().stream()
                .filter(note -> !tones.contains(note))
                .findFirst()
                .orElse(scale.tonic());
        NoteName found = tones.get(scale.tones().indexOf(due));
        return new ModelledError<>(
                reason,
                tones,
                () -> Phrase.sentence("That is {0}.", new Scale(scale.tonic(), given))
                        .then(moved(scale, due, found)));
    }

    private static Phrase moved(Scale scale, NoteName due, NoteName found) {
        Phrase place = MusicWords.ordinal(scale.tones().indexOf(due) + 1);
        Phrase where = due.alteration() > found.alteration()
                ? Phrase.sentence("In {0} the {1} stands a half step higher than your {2}.", scale, place, found)
                : Phrase.sentence("In {0} the {1} stands a half step lower than your {2}.", scale, place, found);
        return Math.abs(due.alteration()) > 1 ? where.then(Phrase.sentence("The letter stays.")) : where;
    }

    private static Optional<ModelledError<List<NoteName>>> relative(Scale scale) {
        boolean minor =
                scale.kind().signatureOf().filter(mode -> mode == Mode.AEOLIAN).isPresent();
        NoteName sixth = Degree.of(6, 0).above(scale.tonic());
        return minor
                ? Optional.of(new ModelledError<>(
                        RELATIVE_FOR_PARALLEL,
                        new Scale(sixth, scale.kind()).tones(),
                        () -> Phrase.sentence(
                                "That is {0}, the relative. The parallel minor starts on {1} itself.",
                                new Scale(sixth, scale.kind()), scale.tonic())))
                : Optional.empty();
    }

    private static List<NoteName> bare(Scale scale) {
        List<NoteName> letters = new ArrayList<>(DiatonicTriads.bare(scale.tones()));
        letters.set(0, scale.tonic());
        return letters;
    }

    private static Phrase firstAccidental(Scale scale) {
        return scale.tones().stream()
                .skip(1)
                .filter(note -> note.alteration() != 0)
                .findFirst()
                .map(note -> Phrase.sentence("The first one falls on {0}.", DiatonicTriads.bare(note)))
                .orElse(Phrase.NOTHING);
    }

    private static Coaching coaching(Scale scale) {
        List<NoteName> tones = scale.tones();
        List<Integer> steps = scale.kind().steps();
        List<Phrase> moves = new ArrayList<>();
        for (int i = 0; i + 1 < tones.size(); i++) {
            moves.add(Phrase.of("{0} to {1}", MusicWords.steps(steps.get(i)), tones.get(i + 1)));
        }
        int last = tones.size() - 1;
        return Coaching.of(
                Phrase.sentence("Write the letters first, each once. Then mend each step with a sharp or a flat."),
                Phrase.sentence("From {0}, {1}.", tones.get(0), Phrase.list(moves.subList(0, 2))),
                Phrase.sentence("All but the last: {0}.", Phrase.row(tones.subList(0, last))),
                Phrase.sentence("From {0}, {1}: {2}.", tones.get(0), Phrase.list(moves), Phrase.row(tones)));
    }
}
