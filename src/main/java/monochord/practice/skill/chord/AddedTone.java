package monochord.practice.skill.chord;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Derivation;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/**
 * A triad with one tone more, spelled, on the tonic ({@code add9}), by symbol or by numeral ({@code IVadd9}).
 *
 * <p>{@code 2} is asked as charts write it. Most players add the ninth and keep the third; some play it suspended. Both are
 * taken: common practice, no source.
 */
public final class AddedTone implements Skill {
    private static final List<String> SUBJECTS = List.of("add9", "6", "m(add9)", "m6", "add4", "2");
    private static final String TWO = "2";

    @Override
    public String id() {
        return "added-tone";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Added tones");
    }

    @Override
    public List<String> subjects(Key key) {
        return SUBJECTS;
    }

    @Override
    public Question question(Key key, String subject) {
        boolean two = subject.strip().toLowerCase(Locale.ROOT).equals(TWO);
        ChordSubject about = ChordSubject.parse(subject, key, SUBJECTS, "a chord with an added tone", "Cadd9");
        Chord chord = about.chord();
        if (!isAsked(chord)) {
            throw Unreadable.because(
                    subject, 0, "a chord with an added tone", "add9, 6, m(add9), m6 and add4 are asked", "Cadd9");
        }
        Phrase named = two ? Phrase.of("{0}2", chord.root()) : Phrase.of("{0}", chord);
        Phrase prompt = Phrase.sentence("Spell {0}, root first.", named);
        Topic topic = about.topic(id());
        ChordRubric judge = two
                ? ChordRubric.spelled(
                        chord,
                        new Chord(chord.root(), ChordKind.parse("sus2")),
                        Phrase.sentence(
                                "{0} is played so too, without the third. Most players keep it: {1}.",
                                named, Phrase.row(chord.tones())),
                        () -> errors(chord))
                : ChordRubric.spelled(chord, () -> errors(chord));
        return Question.of(topic, AnswerForm.NOTES, prompt, judge, coaching(chord));
    }

    private static boolean isAsked(Chord chord) {
        return !chord.isInverted()
                && SUBJECTS.stream().map(ChordKind::parse).anyMatch(kind -> kind.equals(chord.kind()));
    }

    private static Interval added(Chord chord) {
        return chord.kind().intervals().stream()
                .filter(interval -> !chord.kind().triad().holds(interval))
                .findFirst()
                .orElseThrow();
    }

    private static ChordKind triad(Chord chord) {
        return chord.kind().triad();
    }

    private static List<ModelledError<Tones>> errors(Chord chord) {
        ChordErrors errors = new ChordErrors(chord);
        Phrase here = Phrase.sentence("{0}.", told(chord));
        missingTones(chord, errors);
        sevenths(chord, errors);
        for (Interval lowered : List.of(Interval.MINOR_SECOND, Interval.MINOR_SIXTH, Interval.AUGMENTED_FOURTH)) {
            if (lowered.staffSteps() == added(chord).withinOctave().staffSteps()) {
                errors.add(
                        Misconception.WRONG_QUALITY,
                        triad(chord).with(lowered),
                        Phrase.sentence("The letter is right.").then(here));
            }
        }
        return errors.lettersOnly(() ->
                        Derivation.sizes(new Chord(chord.root(), triad(chord))).then(here))
                .all();
    }

    private static void missingTones(Chord chord, ChordErrors errors) {
        errors.add(
                Misconception.MISSING_NOTE,
                Optional.of(triad(chord)),
                Phrase.sentence("That is the plain triad.").then(Phrase.sentence("{0}.", told(chord))));
        errors.add(
                Misconception.MISSING_NOTE,
                chord.kind().without(chord.kind().interval(3).orElseThrow()),
                Phrase.sentence("Added means on top of the triad, so the third stays."));
    }

    /** A seventh beside the added tone, and one in its place. */
    private static void sevenths(Chord chord, ChordErrors errors) {
        boolean sixth = added(chord).number() == 6;
        for (Interval seventh : List.of(Interval.MINOR_SEVENTH, Interval.MAJOR_SEVENTH)) {
            errors.add(
                    Misconception.EXTRA_NOTE,
                    chord.kind().with(seventh),
                    Phrase.sentence(
                            "There is a seventh in it, {0}. Added means no seventh.",
                            chord.root().plus(seventh)));
            errors.add(
                    sixth ? Misconception.COUNTED_FROM_ZERO : Misconception.WRONG_DEGREE,
                    triad(chord).with(seventh),
                    sixth
                            ? Phrase.sentence("That adds the seventh: the root counts as 1.")
                            : Phrase.sentence("That adds the seventh.").then(Phrase.sentence("{0}.", told(chord))));
        }
    }

    private static Phrase told(Chord chord) {
        Interval added = added(chord);
        Phrase where = added.semitones() > 12
                ? Phrase.of("{0} above the octave of the root", MusicWords.steps(added.semitones() - 12))
                : Phrase.of("{0} above the root", MusicWords.halfStepsInWords(added.semitones()));
        return Phrase.of("The {0} lies {1}", MusicWords.number(added.number()), where);
    }

    private static Coaching coaching(Chord chord) {
        Chord plain = new Chord(chord.root(), triad(chord));
        return Coaching.of(
                Phrase.sentence("The triad first, all of it; then one note more, and no seventh."),
                Phrase.sentence("Count letters from the root, the root as 1; beyond the octave 9 is 2 again."),
                Phrase.sentence("The triad is {0}. {1}.", Phrase.row(plain.tones()), told(chord)),
                Phrase.sentence(
                                "The triad is {0}. {1}: {2}.",
                                Phrase.row(plain.tones()),
                                told(chord),
                                chord.root().plus(added(chord)))
                        .then(Derivation.chord(chord)));
    }
}
