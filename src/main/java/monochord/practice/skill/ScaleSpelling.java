package monochord.practice.skill;

import static monochord.practice.Misconception.RELATIVE_FOR_PARALLEL;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.Say;
import monochord.practice.answer.ScaleRubric;
import monochord.practice.answer.Slip;
import monochord.practice.teaching.Own;
import monochord.practice.teaching.Walk;
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
    public String title() {
        return "Spelling scales";
    }

    @Override
    public List<String> subjects(Key key) {
        return ScaleSubject.all(key);
    }

    @Override
    public Question question(Key key, String subject) {
        ScaleSubject about = ScaleSubject.parse(subject, key);
        Scale scale = about.scale();
        String up = scale.kind().equals(ScaleKind.MELODIC_MINOR) ? " going up" : "";
        String prompt = "Spell " + Say.scale(scale) + up + ", from " + Say.note(scale.tonic()) + ".";
        ScaleRubric judge = new ScaleRubric(scale, () -> slips(scale));
        return Question.of(new Topic(id(), about.text(), about.key()), Form.NOTES, prompt, judge, coaching(scale));
    }

    private static List<Slip<List<NoteName>>> slips(Scale scale) {
        List<Slip<List<NoteName>>> slips = new ArrayList<>();
        boolean major = scale.kind().equals(ScaleKind.MAJOR);
        if (major) {
            slips.add(forgotten(scale));
        }
        if (MINORS.contains(scale.kind())) {
            MINORS.stream()
                    .filter(kind -> !kind.equals(scale.kind()))
                    .forEach(kind -> slips.add(formOfMinor(scale, kind)));
        }
        relative(scale).ifPresent(slips::add);
        if (!major) {
            slips.add(forgotten(scale));
        }
        return slips;
    }

    private static Slip<List<NoteName>> forgotten(Scale scale) {
        return new Slip<>(
                SIGNATURE_FORGOTTEN,
                bare(scale),
                () -> "Those are the letters; the accidentals are still to come. " + firstAccidental(scale));
    }

    private static Slip<List<NoteName>> formOfMinor(Scale scale, ScaleKind given) {
        Misconception reason = Steps.reason(scale.kind(), given);
        List<NoteName> tones = new Scale(scale.tonic(), given).tones();
        NoteName due = scale.tones().stream()
                .filter(note -> !tones.contains(note))
                .findFirst()
                .orElse(scale.tonic());
        NoteName found = tones.get(scale.tones().indexOf(due));
        return new Slip<>(
                reason,
                tones,
                () -> "That is " + Say.scale(new Scale(scale.tonic(), given)) + ". In " + Say.scale(scale) + " the "
                        + Walk.ordinal(scale.tones().indexOf(due) + 1) + " stands a half step "
                        + (due.alteration() > found.alteration() ? "higher" : "lower") + " than your "
                        + Say.note(found) + keptLetter(due));
    }

    private static String keptLetter(NoteName due) {
        return Math.abs(due.alteration()) > 1 ? "; the letter stays." : ".";
    }

    private static Optional<Slip<List<NoteName>>> relative(Scale scale) {
        boolean minor =
                scale.kind().signatureOf().filter(mode -> mode == Mode.AEOLIAN).isPresent();
        NoteName sixth = Degree.of(6, 0).above(scale.tonic());
        return minor
                ? Optional.of(new Slip<>(
                        RELATIVE_FOR_PARALLEL,
                        new Scale(sixth, scale.kind()).tones(),
                        () -> "That is " + Say.scale(new Scale(sixth, scale.kind()))
                                + ", the relative. The parallel minor starts on " + Say.note(scale.tonic())
                                + " itself."))
                : Optional.empty();
    }

    private static List<NoteName> bare(Scale scale) {
        List<NoteName> letters = new ArrayList<>(Own.bare(scale.tones()));
        letters.set(0, scale.tonic());
        return letters;
    }

    private static String firstAccidental(Scale scale) {
        return scale.tones().stream()
                .skip(1)
                .filter(note -> note.alteration() != 0)
                .findFirst()
                .map(note -> "The first one falls on " + note.letter() + ".")
                .orElse("");
    }

    private static Coaching coaching(Scale scale) {
        List<NoteName> tones = scale.tones();
        List<Integer> steps = scale.kind().steps();
        List<String> moves = new ArrayList<>();
        for (int i = 0; i + 1 < tones.size(); i++) {
            moves.add(Say.step(steps.get(i)) + " to " + Say.note(tones.get(i + 1)));
        }
        int last = tones.size() - 1;
        return Coaching.of(
                "Write the letters first, each once. Then mend each step with a sharp or a flat.",
                "From " + Say.note(tones.get(0)) + ", " + Say.words(moves.subList(0, 2)) + ".",
                "All but the last: " + Say.row(tones.subList(0, last)) + ".",
                "From " + Say.note(tones.get(0)) + ", " + Say.words(moves) + ": " + Say.row(tones) + ".");
    }
}
