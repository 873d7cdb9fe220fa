package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.LETTERS_ONLY;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;
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

/** Numbers into chord names. */
final class ProgressionInKey implements Skill {
    @Override
    public String id() {
        return "progression-in-key";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Progressions in a key");
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
        Phrase prompt = Phrase.sentence("Name the chords in {0}: {1}.", key, about.numbers());
        ProgressionRubric judge = ProgressionRubric.names(about.chords(), key, () -> errors(about));
        Topic topic = new Topic(id(), about.numbers(Signs.ASCII), key);
        return Question.of(topic, AnswerForm.PROGRESSION, prompt, judge, coaching(about));
    }

    private static List<ModelledError<List<Chord>>> errors(ProgressionSubject about) {
        List<ModelledError<List<Chord>>> errors = new ArrayList<>();
        Key key = about.key();
        errors.add(new ModelledError<>(NOT_LOWERED, about.unaltered(), () -> notLowered(about)));
        errors.add(new ModelledError<>(NOT_LOWERED, about.unalteredRoots(), () -> notLowered(about)));
        errors.add(new ModelledError<>(
                LETTERS_ONLY,
                about.letters(),
                () -> Phrase.sentence(
                        "The letters are right and accidentals are missing: the scale is {0}.",
                        Phrase.row(key.scale().tones()))));
        errors.add(new ModelledError<>(
                QUALITY_OF_THE_KEY,
                about.alike(),
                () -> Phrase.sentence(
                        "The roots are right. Not every chord has the quality of the tonic: a minus says minor.")));
        errors.add(new ModelledError<>(
                COUNTED_FROM_ZERO,
                about.oneFurther(),
                () -> Phrase.sentence("Every chord is one degree too far. The tonic counts as 1.")));
        otherTonic(about, NoteName.C, errors);
        otherTonic(about, key.relative().tonic(), errors);
        return errors;
    }

    private static Phrase notLowered(ProgressionSubject about) {
        Chord chord = about.hardest();
        Key key = about.key();
        int number = about.degree(chord).number();
        return Phrase.sentence(
                        "{0} was played as {1}: the flat in front has been passed over.",
                        BandNumber.of(chord, key), number)
                .then(Phrase.sentence(
                        "The {0} of {1} is {2}; the {3} stands a half step lower.",
                        MusicWords.ordinal(number), key, key.note(number), BandNumber.of(chord, key)));
    }

    private static void otherTonic(ProgressionSubject about, NoteName tonic, List<ModelledError<List<Chord>>> errors) {
        Key key = about.key();
        Phrase message =
                Phrase.sentence("That is the same row in {0}. Here 1 is {1}.", new Key(tonic, key.mode()), key.tonic());
        errors.add(new ModelledError<>(WRONG_KEY, about.moved(key.tonic().to(tonic)), () -> message));
    }

    private static Coaching coaching(ProgressionSubject about) {
        Key key = about.key();
        Chord chord = about.hardest();
        Phrase hardest = Derivation.to(about.degree(chord), key)
                .then(Phrase.sentence("So {0} is {1}.", BandNumber.of(chord, key), chord));
        List<Chord> most = about.chords().subList(0, about.chords().size() - 1);
        return Coaching.of(
                Phrase.sentence("Roots first, quality second. 1 is {0}.", key.tonic()),
                hardest,
                Phrase.sentence("All but the last: {0}.", Phrase.row(most)),
                Phrase.sentence(
                        "The scale is {0}. {1} The row: {2}.",
                        Phrase.row(key.scale().tones()), hardest, Phrase.row(about.chords())));
    }
}
