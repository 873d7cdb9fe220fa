package monochord.practice.skill.chord;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
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
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** A suspended chord spelled note by note, on the tonic ({@code sus4}), by symbol or by numeral ({@code Vsus4}). */
public final class Suspension implements Skill {
    private static final List<String> SUBJECTS = List.of("sus4", "sus2", "7sus4");

    @Override
    public String id() {
        return "suspension";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Suspensions");
    }

    @Override
    public List<String> subjects(Key key) {
        List<String> subjects = new ArrayList<>(SUBJECTS);
        subjects.addAll(List.of("Vsus4", "V7sus4"));
        return subjects;
    }

    @Override
    public Question question(Key key, String subject) {
        ChordSubject about = ChordSubject.parse(subject, key, SUBJECTS, "a suspended chord", "Gsus4");
        Chord chord = about.chord();
        if (!SUBJECTS.contains(chord.kind().toString()) || chord.isInverted()) {
            throw Unreadable.because(subject, 0, "a suspended chord", "sus4, sus2 and 7sus4 are asked", "Gsus4");
        }
        Phrase prompt = Phrase.sentence("Spell {0}, root first.", chord);
        ChordRubric judge = ChordRubric.spelled(chord, () -> errors(chord));
        return Question.of(about.topic(id()), AnswerForm.NOTES, prompt, judge, coaching(chord));
    }

    private static boolean isFourth(Chord chord) {
        return chord.kind().holds(Interval.PERFECT_FOURTH);
    }

    private static Interval suspended(Chord chord) {
        return isFourth(chord) ? Interval.PERFECT_FOURTH : Interval.MAJOR_SECOND;
    }

    private static List<ModelledError<Tones>> errors(Chord chord) {
        ChordErrors errors = new ChordErrors(chord);
        thirdKept(chord, Interval.MAJOR_THIRD, errors);
        thirdKept(chord, Interval.MINOR_THIRD, errors);
        otherTone(chord, errors);
        errors.add(
                Misconception.MISSING_NOTE,
                chord.kind().without(Interval.MINOR_SEVENTH).filter(kind -> !kind.equals(chord.kind())),
                Phrase.sentence("The suspension is right. The 7 asks for the minor seventh as well."));
        return errors.lettersOnly(() -> Derivation.sizes(chord)).all();
    }

    /** The third beside the suspended tone, and the third in its place. */
    private static void thirdKept(Chord chord, Interval third, ChordErrors errors) {
        NoteName kept = chord.root().plus(third);
        List<NoteName> both = new ArrayList<>(chord.tones());
        both.add(1, kept);
        errors.add(
                Misconception.THIRD_KEPT,
                both,
                () -> Phrase.sentence("The {0} is there, and so is the third, {1}: it has to go.", name(chord), kept)
                        .then(replaced(chord)));
        errors.add(
                Misconception.THIRD_KEPT,
                opened(chord).flatMap(kind -> kind.with(third)),
                Phrase.sentence("The third, {0}, is still there.", kept).then(replaced(chord)));
    }

    /** The second for the fourth or the other way round, and a fourth too wide. */
    private static void otherTone(Chord chord, ChordErrors errors) {
        Interval other = isFourth(chord) ? Interval.MAJOR_SECOND : Interval.PERFECT_FOURTH;
        errors.add(
                Misconception.WRONG_DEGREE,
                opened(chord).flatMap(kind -> kind.with(other)),
                Phrase.sentence("That suspends the {0}.", MusicWords.number(isFourth(chord) ? 2 : 4))
                        .then(replaced(chord)));
        errors.add(
                Misconception.WRONG_DEGREE,
                opened(chord).flatMap(kind -> kind.with(Interval.AUGMENTED_FOURTH)),
                Phrase.sentence("The fourth is a perfect one, five half steps above the root.")
                        .then(replaced(chord)));
    }

    private static Optional<ChordKind> opened(Chord chord) {
        return chord.kind().without(suspended(chord));
    }

    private static Phrase name(Chord chord) {
        return MusicWords.number(isFourth(chord) ? 4 : 2);
    }

    private static Phrase replaced(Chord chord) {
        return Phrase.sentence("In {0} the {1} stands in place of the third.", chord, name(chord));
    }

    private static Coaching coaching(Chord chord) {
        NoteName third = chord.root().plus(Interval.MAJOR_THIRD);
        NoteName tone = chord.root().plus(suspended(chord));
        List<NoteName> framed =
                chord.tones().stream().filter(note -> !note.equals(tone)).toList();
        Phrase later = isFourth(chord)
                ? Phrase.sentence("Later {0} falls to the third, {1}.", tone, third)
                : Phrase.sentence("Later {0} rises to the third, {1}.", tone, third);
        return Coaching.of(
                Phrase.sentence("A suspended chord has no third. Another note sits in its place."),
                Phrase.sentence("The number says which: the {0} above {1}.", name(chord), chord.root()),
                Phrase.sentence(
                        "{0} are there in any case. Between them comes the {1}, {2} above the root.",
                        Phrase.list(framed),
                        name(chord),
                        MusicWords.steps(suspended(chord).semitones())),
                Derivation.stack(chord).then(replaced(chord)).then(later).then(Derivation.chord(chord)));
    }
}
