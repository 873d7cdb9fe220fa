package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;

import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.QualityRubric;
import monochord.practice.teaching.Derivation;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;

/** The quality of the key's own chord on a degree. */
final class DegreeQuality implements Skill {
    @Override
    public String id() {
        return "degree-quality";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Qualities of the degrees");
    }

    @Override
    public List<String> subjects(Key key) {
        return DegreeChord.DEGREES;
    }

    @Override
    public Question question(Key key, String subject) {
        int number = DiatonicTriads.degree(subject, key);
        Chord chord = DiatonicTriads.triad(number, key);
        Phrase prompt = Phrase.sentence(
                "In {0}, what quality has the triad on the {1} degree?", key, MusicWords.ordinal(number));
        Phrase way = way(number, key);
        QualityRubric judge =
                new QualityRubric(chord, DiatonicTriads.alternative(number, key), way, () -> errors(number, key));
        return Question.of(
                new Topic(id(), "" + number, key), AnswerForm.QUALITY, prompt, judge, coaching(number, chord, key));
    }

    private static Phrase reason(int number, Key key) {
        Chord chord = DiatonicTriads.triad(number, key);
        return DiatonicTriads.gathered(number, key)
                .then(Phrase.sentence(
                        "{0}, and that is {1}.",
                        Derivation.thirds(chord),
                        MusicWords.quality(chord.kind().quality())));
    }

    private static Phrase way(int number, Key key) {
        return DiatonicTriads.gathered(number, key).then(Phrase.sentence("Which third lies below, which above?"));
    }

    private static List<ModelledError<ChordKind>> errors(int number, Key key) {
        Chord chord = DiatonicTriads.triad(number, key);
        ChordKind ofKey = DiatonicTriads.triad(1, key).kind();
        Chord next = DiatonicTriads.next(number, key);
        return List.of(
                new ModelledError<>(
                        QUALITY_OF_THE_KEY,
                        ofKey,
                        () -> Phrase.sentence(
                                        "The key is {0}; its chord on {1} need not be.",
                                        MusicWords.quality(ofKey.quality()), number)
                                .then(way(number, key))),
                new ModelledError<>(
                        COUNTED_FROM_ZERO,
                        next.kind(),
                        () -> Phrase.sentence("That would be {0}, one degree further: the tonic counts as 1.", next)));
    }

    private static Coaching coaching(int number, Chord chord, Key key) {
        return Coaching.of(
                Phrase.sentence(
                        "Take every other note of the scale from that degree, and listen for the half steps you pass over."),
                Derivation.count(number, key),
                Phrase.sentence(
                        "The notes are {0}. Measure the lower third, then the upper one.", Phrase.row(chord.tones())),
                Derivation.count(number, key).then(reason(number, key)));
    }
}
