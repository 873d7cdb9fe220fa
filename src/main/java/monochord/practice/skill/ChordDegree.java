package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.WRONG_KEY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.DegreeRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.teaching.Derivation;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/** The degree a chord stands on, as numeral or number. The subject is a degree ({@code 6}) or a chord ({@code Em}). */
final class ChordDegree implements Skill {
    @Override
    public String id() {
        return "chord-degree";
    }

    @Override
    public Phrase title() {
        return Phrase.of("The degree of a chord");
    }

    @Override
    public List<String> subjects(Key key) {
        return DegreeChord.DEGREES;
    }

    @Override
    public Question question(Key key, String subject) {
        String text = subject.strip();
        boolean byDegree = text.matches("[b#♭♯]*[1-7IViv].*");
        Chord chord = byDegree ? onDegree(text, key) : Chord.parse(text);
        String canonical = byDegree ? text : chord.toString();
        Phrase prompt = Phrase.sentence("In {0}, which degree is {1}? A numeral or a number will do.", key, chord);
        Phrase way = Derivation.to(key.degreeOf(chord.root()), key);
        DegreeRubric judge = new DegreeRubric(chord, key, way, () -> errors(chord, key));
        return Question.of(new Topic(id(), canonical, key), AnswerForm.NUMERAL, prompt, judge, coaching(chord, key));
    }

    private static Chord onDegree(String text, Key key) {
        try {
            return BandNumber.parse(text, key).in(key);
        } catch (Unreadable unreadable) {
            return Numeral.parse(text).in(key);
        }
    }

    private static List<ModelledError<Numeral>> errors(Chord chord, Key key) {
        List<ModelledError<Numeral>> errors = new ArrayList<>();
        int number = key.degreeOf(chord.root()).number();
        if (number > 1) {
            Numeral below = Numeral.onDegree(DiatonicTriads.triad(number - 1, key), key);
            errors.add(new ModelledError<>(
                    COUNTED_FROM_ZERO, below, () -> Phrase.sentence("One too few: the tonic counts as 1.")));
        }
        Key relative = key.relative();
        Numeral inRelative = Numeral.onDegree(chord, relative);
        errors.add(new ModelledError<>(
                WRONG_KEY,
                inRelative,
                () -> Phrase.sentence(
                        "That is its place in {0}. Here the tonic is {1}: count from there.", relative, key.tonic())));
        return errors;
    }

    private static Phrase reason(Chord chord, Key key) {
        Degree degree = key.degreeOf(chord.root());
        return Derivation.to(degree, key).then(Phrase.sentence("So {0} is {1}.", chord, Numeral.onDegree(chord, key)));
    }

    private static Coaching coaching(Chord chord, Key key) {
        Degree degree = key.degreeOf(chord.root());
        boolean major = chord.kind().holds(Interval.MAJOR_THIRD);
        return Coaching.of(
                Phrase.sentence("Count letters from the tonic up to the root of the chord, with the tonic as 1."),
                Phrase.sentence("The tonic is {0}, the root is {1}.", key.tonic(), chord.root()),
                Derivation.to(degree, key)
                        .then(
                                major
                                        ? Phrase.sentence(
                                                "The chord is {0}: capitals.",
                                                MusicWords.quality(chord.kind().quality()))
                                        : Phrase.sentence(
                                                "The chord is {0}: small letters.",
                                                MusicWords.quality(chord.kind().quality()))),
                reason(chord, key));
    }
}
