package monochord.practice.skill;

import static monochord.practice.Misconception.RELATIVE_FOR_PARALLEL;
import static monochord.practice.Misconception.WRONG_SOURCE;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Borrowing;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.SourceRubric;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** The parallel scale a borrowed chord comes from. */
final class BorrowedSource implements Skill {
    @Override
    public String id() {
        return "borrowed-source";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Where a chord is borrowed from");
    }

    @Override
    public List<String> subjects(Key key) {
        return BorrowedSubject.all(key);
    }

    @Override
    public List<Key> keys() {
        return BorrowedSubject.keys();
    }

    @Override
    public Question question(Key key, String subject) {
        BorrowedSubject about = BorrowedSubject.parse(subject, key);
        List<Scale> sources = Borrowing.borrowedFrom(about.chord(), key);
        if (sources.isEmpty()) {
            throw Unreadable.because(subject, 0, "a borrowed chord", "no parallel scale holds it", "bVI");
        }
        Phrase prompt = Phrase.sentence(
                "{0} is {1}. Which scale on {2} does it come from? Where there are several, the nearest.",
                about.named(), Phrase.row(about.chord().tones()), key.tonic());
        SourceRubric judge = new SourceRubric(about.chord(), key, sources, () -> errors(about));
        return Question.of(
                new Topic(id(), about.text(), key), AnswerForm.CHOICE, prompt, judge, coaching(about, sources.get(0)));
    }

    private static List<ModelledError<Scale>> errors(BorrowedSubject about) {
        List<ModelledError<Scale>> errors = new ArrayList<>();
        Key key = about.key();
        Scale relative = key.relative().scale();
        errors.add(new ModelledError<>(
                RELATIVE_FOR_PARALLEL,
                relative,
                () -> Phrase.sentence(
                        "{0} is the relative: it has the notes you began with, so there is nothing in it to borrow. The parallel stands on {1}.",
                        relative, key.tonic())));
        for (Scale other : Borrowing.parallels(key)) {
            errors.add(new ModelledError<>(WRONG_SOURCE, other, () -> missing(about.chord(), other)));
        }
        errors.add(new ModelledError<>(WRONG_SOURCE, key.scale(), () -> missing(about.chord(), key.scale())));
        return errors;
    }

    private static Phrase missing(Chord chord, Scale scale) {
        List<NoteName> missing =
                chord.tones().stream().filter(tone -> !scale.holds(tone)).toList();
        return Phrase.sentence(
                "{0} has {1}, and the chord is {2}.",
                scale,
                Phrase.list(
                        missing.stream().map(note -> Phrase.of("no {0}", note)).toList()),
                Phrase.row(chord.tones()));
    }

    private static Coaching coaching(BorrowedSubject about, Scale source) {
        List<Degree> changed = Borrowing.borrowed(about.chord(), about.key()).changed();
        Phrase degrees = Phrase.list(changed);
        Phrase row = Phrase.row(source.tones());
        return Coaching.of(
                Phrase.sentence("Which of its notes does the key not have?"),
                Phrase.sentence("From outside the key: {0}.", degrees),
                Phrase.sentence(
                        "On {0} you need a scale with {1} and as few other changes as can be.",
                        about.key().tonic(), degrees),
                Phrase.sentence(
                        "The chord is {0}. From outside the key: {1}. {2} is {3}: it holds them all.",
                        Phrase.row(about.chord().tones()), degrees, source, row));
    }
}
