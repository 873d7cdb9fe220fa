package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.LOWERED_TOO_FAR;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;
import static monochord.practice.Misconception.WRONG_WAY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.NoteRubric;
import monochord.practice.teaching.Derivation;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** The note on a lowered degree, counted from the major scale on the tonic. */
final class LoweredDegree implements Skill {
    @Override
    public String id() {
        return "lowered-degree";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Lowered degrees");
    }

    @Override
    public List<String> subjects(Key key) {
        return List.of("b7", "b6", "b3", "b2");
    }

    @Override
    public List<Key> keys() {
        return BorrowedSubject.keys();
    }

    @Override
    public Question question(Key key, String subject) {
        Degree degree = Degree.parse(subject.strip());
        Key major = Key.major(key.tonic());
        if (degree.alteration() == 0 || Math.abs(degree.alteration()) > 1) {
            throw Unreadable.because(subject, 0, "a lowered degree", "one flat or sharp stands in front", "b6");
        }
        Phrase prompt = key.isMinor()
                ? Phrase.sentence("Which note is the {0}, counted from {1}?", Phrase.inWords(degree), major)
                : Phrase.sentence("Which note is the {0} of {1}?", Phrase.inWords(degree), major);
        NoteRubric judge = new NoteRubric(
                major.note(degree), key.tonic(), Derivation.toward(degree, major), () -> errors(degree, major));
        return Question.of(
                new Topic(id(), degree.toString(), key), AnswerForm.NOTES, prompt, judge, coaching(degree, major));
    }

    private static List<ModelledError<NoteName>> errors(Degree degree, Key key) {
        List<ModelledError<NoteName>> errors = new ArrayList<>(List.of(
                plain(degree, key),
                bareLetter(degree, key),
                new ModelledError<>(
                        LOWERED_TOO_FAR,
                        key.note(Degree.of(degree.number(), 2 * degree.alteration())),
                        () -> Phrase.sentence(
                                "A half step too far. One sign in front moves the plain degree by one half step.")),
                otherWay(degree, key)));
        if (degree.number() < 7) {
            Degree next = Degree.of(degree.number() + 1, degree.alteration());
            errors.add(new ModelledError<>(
                    COUNTED_FROM_ZERO,
                    key.note(next),
                    () -> Phrase.sentence("That is the {0}: the tonic counts as 1.", Phrase.inWords(next))));
        }
        return errors;
    }

    private static boolean isLowered(Degree degree) {
        return degree.alteration() < 0;
    }

    private static ModelledError<NoteName> plain(Degree degree, Key key) {
        NoteName plain = key.note(degree.number());
        return new ModelledError<>(
                NOT_LOWERED,
                plain,
                () -> Phrase.sentence(
                                "{0} is the {1} as the major scale has it.", plain, MusicWords.ordinal(degree.number()))
                        .then(
                                isLowered(degree)
                                        ? Phrase.sentence("Take it a half step down, same letter.")
                                        : Phrase.sentence("Take it a half step up, same letter.")));
    }

    private static ModelledError<NoteName> bareLetter(Degree degree, Key key) {
        NoteName plain = key.note(degree.number());
        return new ModelledError<>(
                SIGNATURE_FORGOTTEN,
                NoteName.of(plain.letter(), degree.alteration()),
                () -> (isLowered(degree)
                                ? Phrase.sentence("That is the bare letter lowered.")
                                : Phrase.sentence("That is the bare letter raised."))
                        .then(Phrase.sentence(
                                "In the key the {0} is {1}; start from there.",
                                MusicWords.ordinal(degree.number()), plain)));
    }

    private static ModelledError<NoteName> otherWay(Degree degree, Key key) {
        return new ModelledError<>(
                WRONG_WAY,
                key.note(Degree.of(degree.number(), -degree.alteration())),
                () -> isLowered(degree)
                        ? Phrase.sentence("You went the other way: lowered is a half step down.")
                        : Phrase.sentence("You went the other way: raised is a half step up."));
    }

    private static Coaching coaching(Degree degree, Key key) {
        int number = degree.number();
        return Coaching.of(
                Phrase.sentence("Find the plain degree first, then move it a half step and keep its letter."),
                Phrase.sentence("Count from {0} as 1 up to the {1}.", key.tonic(), MusicWords.ordinal(number)),
                Derivation.count(number, key)
                        .then(
                                isLowered(degree)
                                        ? Phrase.sentence("Now a half step down, same letter.")
                                        : Phrase.sentence("Now a half step up, same letter.")),
                Derivation.to(degree, key));
    }
}
