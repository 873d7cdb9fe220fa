package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;
import static monochord.practice.Misconception.WRONG_DEGREE;
import static monochord.practice.Misconception.WRONG_QUALITY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Derivation;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;

/** The key's own chord on a degree, by name or by notes. */
final class DegreeChord implements Skill {
    /** From the chords a band leans on to the one it hardly uses. */
    static final List<String> DEGREES = List.of("1", "4", "5", "6", "2", "3", "7");

    private static final List<ChordKind> KINDS =
            List.of(ChordKind.MAJOR, ChordKind.MINOR, ChordKind.DIMINISHED, ChordKind.AUGMENTED);

    @Override
    public String id() {
        return "degree-chord";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Chords on the degrees");
    }

    @Override
    public List<String> subjects(Key key) {
        return DEGREES;
    }

    @Override
    public Question question(Key key, String subject) {
        int number = DiatonicTriads.degree(subject, key);
        Chord chord = DiatonicTriads.triad(number, key);
        Phrase prompt =
                Phrase.sentence("Which triad stands on the {0} degree of {1}?", MusicWords.ordinal(number), key);
        ChordRubric judge = ChordRubric.named(
                chord,
                DiatonicTriads.alternative(number, key),
                Derivation.count(number, key),
                () -> errors(number, key));
        return Question.of(
                new Topic(id(), "" + number, key), AnswerForm.CHORD, prompt, judge, coaching(number, chord, key));
    }

    private static List<ModelledError<Tones>> errors(int number, Key key) {
        List<ModelledError<Tones>> errors = new ArrayList<>();
        Chord chord = DiatonicTriads.triad(number, key);
        ChordKind ofKey = DiatonicTriads.triad(1, key).kind();
        Chord next = DiatonicTriads.next(number, key);
        errors.add(new ModelledError<>(
                COUNTED_FROM_ZERO,
                Tones.of(next),
                () -> Phrase.sentence("{0} stands one degree further. Count the tonic as 1.", next)
                        .then(Derivation.count(number, key))));
        errors.add(new ModelledError<>(
                SIGNATURE_FORGOTTEN, Tones.of(DiatonicTriads.bare(chord.tones())), () -> forgotten(key)));
        errors.add(
                new ModelledError<>(
                        QUALITY_OF_THE_KEY,
                        Tones.of(new Chord(chord.root(), ofKey)),
                        () -> Phrase.sentence(
                                "The root is right. The scale decides the rest, not the name of the key: take its third from there and count the half steps.")));
        for (ChordKind kind : KINDS) {
            errors.add(new ModelledError<>(
                    WRONG_QUALITY,
                    Tones.of(new Chord(chord.root(), kind)),
                    () -> Phrase.sentence(
                            "The root is right. Take third and fifth from the scale, then measure the two thirds.")));
        }
        otherDegrees(number, key, errors);
        return errors;
    }

    private static Phrase forgotten(Key key) {
        return Phrase.sentence(
                "The letters are right, but the signature counts in every chord, and here it has {0}.", signs(key));
    }

    /** {@code one flat}, {@code three sharps}. */
    private static Phrase signs(Key key) {
        int count = Math.abs(key.signature());
        if (count == 0) {
            return Phrase.of("no signs");
        }
        return key.signature() < 0
                ? Phrase.counted(count, "one flat", "{0} flats", Phrase.number(count))
                : Phrase.counted(count, "one sharp", "{0} sharps", Phrase.number(count));
    }

    private static void otherDegrees(int number, Key key, List<ModelledError<Tones>> errors) {
        for (String other : DEGREES) {
            Chord there = DiatonicTriads.triad(DiatonicTriads.degree(other, key), key);
            errors.add(new ModelledError<>(
                    WRONG_DEGREE,
                    Tones.of(there),
                    () -> Phrase.sentence("{0} is the chord on {1}.", there, Integer.valueOf(other))
                            .then(Derivation.count(number, key))));
        }
    }

    private static Coaching coaching(int number, Chord chord, Key key) {
        return Coaching.of(
                Phrase.sentence("Find the root first: the tonic is 1."),
                Derivation.count(number, key),
                Derivation.allButLast(chord).then(Phrase.sentence("The signature has {0}.", signs(key))),
                Phrase.sentence(
                        "{0} {1} {2}, which makes {3}.",
                        Derivation.count(number, key),
                        DiatonicTriads.gathered(number, key),
                        Derivation.thirds(chord),
                        MusicWords.triad(chord)));
    }
}
