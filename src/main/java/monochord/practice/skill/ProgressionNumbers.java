package monochord.practice.skill;

import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.WRONG_KEY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.ProgressionRubric;
import monochord.practice.teaching.Derivation;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/** Chord names into numbers. */
final class ProgressionNumbers implements Skill {
    @Override
    public String id() {
        return "progression-numbers";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Progressions as numbers");
    }

    /** The borrowed chords in it come later. */
    @Override
    public int firstSubjects() {
        return 3;
    }

    @Override
    public List<String> subjects(Key key) {
        return ProgressionSubject.all(key);
    }

    @Override
    public Question question(Key key, String subject) {
        ProgressionSubject about = ProgressionSubject.parse(subject, key);
        Phrase prompt = Phrase.sentence("Say these chords as numbers in {0}: {1}.", key, Phrase.row(about.chords()));
        ProgressionRubric judge = ProgressionRubric.numbers(about.chords(), key, () -> errors(about));
        Topic topic = new Topic(id(), about.numbers(Signs.ASCII), key);
        return Question.of(topic, AnswerForm.NUMBER, prompt, judge, coaching(about));
    }

    private static List<ModelledError<List<Chord>>> errors(ProgressionSubject about) {
        List<ModelledError<List<Chord>>> errors = new ArrayList<>();
        errors.add(new ModelledError<>(NOT_LOWERED, about.unaltered(), () -> notLowered(about)));
        errors.add(new ModelledError<>(NOT_LOWERED, about.unalteredRoots(), () -> notLowered(about)));
        if (!about.key().tonic().equals(NoteName.C)) {
            otherTonic(about, NoteName.C, errors);
        }
        otherTonic(about, about.key().relative().tonic(), errors);
        return errors;
    }

    private static Phrase notLowered(ProgressionSubject about) {
        Chord chord = about.hardest();
        Key key = about.key();
        int number = about.degree(chord).number();
        return Phrase.sentence(
                "The {0} of {1} is {2}. {3} stands a half step below it, and the number has to say so.",
                MusicWords.ordinal(number), key, key.note(number), chord);
    }

    /** The numbers that come out when one counts from another tonic. */
    private static void otherTonic(ProgressionSubject about, NoteName tonic, List<ModelledError<List<Chord>>> errors) {
        Key key = about.key();
        Phrase message = Phrase.sentence("You counted from {0}. In {1} 1 is {2}.", tonic, key, key.tonic());
        List<Chord> moved = about.moved(tonic.to(key.tonic()));
        errors.add(new ModelledError<>(WRONG_KEY, moved, () -> message));
        errors.add(new ModelledError<>(WRONG_KEY, about.plain(moved), () -> message));
    }

    private static Phrase derivation(Chord chord, ProgressionSubject about) {
        return Derivation.to(about.degree(chord), about.key())
                .then(Phrase.sentence("So {0} is {1}.", chord, BandNumber.of(chord, about.key())));
    }

    private static Coaching coaching(ProgressionSubject about) {
        Key key = about.key();
        Phrase hardest = derivation(about.hardest(), about);
        List<Chord> most = about.chords().subList(0, about.chords().size() - 1);
        return Coaching.of(
                Phrase.sentence("Count the letters of the roots from {0} as 1.", key.tonic()),
                hardest,
                Phrase.sentence(
                        "All but the last: {0}.",
                        Phrase.row(most.stream()
                                .map(chord -> BandNumber.of(chord, key))
                                .toList())),
                Phrase.sentence(
                        "The scale is {0}. {1} The row: {2}.",
                        Phrase.row(key.scale().tones()), hardest, about.numbers()));
    }
}
