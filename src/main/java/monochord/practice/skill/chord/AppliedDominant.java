package monochord.practice.skill.chord;

import java.util.List;
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
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/** The dominant of another degree, or its leading-note chord, by name or by notes. */
public final class AppliedDominant implements Skill {
    private static final List<String> IN_MAJOR = List.of("V7/V", "V7/vi", "V7/IV", "V7/ii", "V7/iii", "V/V", "viio7/V");
    private static final List<String> IN_MINOR = List.of("V7/V", "V7/iv", "V7/VI", "V7/III", "V7/VII", "V/V");

    @Override
    public String id() {
        return "applied-dominant";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Applied dominants");
    }

    @Override
    public List<String> subjects(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    @Override
    public Question question(Key key, String subject) {
        Numeral numeral = Numeral.parse(subject.strip());
        if (numeral.target() == null) {
            throw Unreadable.because(subject, 0, "an applied chord", "a slash and its goal stand behind it", "V7/V");
        }
        Chord chord = numeral.in(key);
        Chord goal = numeral.target().in(key);
        Phrase prompt = Phrase.sentence("Which chord is {0} in {1}?", numeral, key);
        ChordRubric judge = ChordRubric.named(
                chord,
                Phrase.sentence("Find {0}, first.", goalNamed(numeral, goal)).then(reached(numeral, chord, goal)),
                () -> errors(numeral, key));
        Topic topic = new Topic(id(), numeral.toString(), key);
        return Question.of(topic, AnswerForm.CHORD, prompt, judge, coaching(numeral, chord, goal));
    }

    private static Phrase goalNamed(Numeral numeral, Chord goal) {
        return Phrase.of("{0}, {1}", numeral.target(), goal);
    }

    private static boolean isDominant(Numeral numeral) {
        return numeral.degree() == 5;
    }

    private static Phrase reached(Numeral numeral, Chord chord, Chord goal) {
        return isDominant(numeral)
                ? Phrase.sentence("A fifth above {0} is {1}.", goal.root(), chord.root())
                : Phrase.sentence("A half step below {0} is {1}.", goal.root(), chord.root());
    }

    private static List<ModelledError<Tones>> errors(Numeral numeral, Key key) {
        Chord chord = numeral.in(key);
        Chord goal = numeral.target().in(key);
        ChordErrors errors = new ChordErrors(chord);
        Phrase way = reached(numeral, chord, goal);
        Chord ofTonic =
                Numeral.of(numeral.degree(), numeral.alteration(), chord.kind()).in(key);
        errors.add(
                Misconception.SLASH_FOR_BASS,
                ofTonic.tones(),
                () -> Phrase.sentence(
                        "{0} is {1} of {2} itself. Behind the slash of a numeral stands the chord it leads to.",
                        ofTonic, Numeral.of(numeral.degree(), numeral.alteration(), chord.kind()), key));
        Chord own = own(chord, key);
        errors.add(
                Misconception.QUALITY_OF_THE_KEY,
                own.tones(),
                () -> Phrase.sentence("{0} is what the key has there.", own)
                        .then(
                                (own.root().equals(chord.root())
                                        ? Phrase.sentence(
                                                "The root is right; a dominant needs its leading note, whatever the key says.")
                                        : way)));
        errors.add(
                Misconception.WRONG_DEGREE,
                new Chord(goal.root(), chord.kind()).tones(),
                () -> Phrase.sentence("That stands on the goal itself.").then(way));
        seventh(chord, errors);
        return errors.lettersOnly(() -> Derivation.sizes(chord)).all();
    }

    /** The chord with the key's own tones on the same letters. */
    private static Chord own(Chord chord, Key key) {
        var tones = chord.tones().stream()
                .map(tone -> key.note(key.degreeOf(tone).number()))
                .toList();
        return ChordKind.of(tones.get(0), tones)
                .map(kind -> new Chord(tones.get(0), kind))
                .orElse(DiatonicTriads.triad(key.degreeOf(chord.root()).number(), key));
    }

    private static void seventh(Chord chord, ChordErrors errors) {
        Optional<Interval> seventh = chord.kind().interval(7);
        seventh.flatMap(interval -> chord.kind().without(interval)).ifPresent(triad -> {
            Phrase due = Phrase.of(
                    "{0} half steps above the root",
                    Phrase.number(seventh.orElseThrow().semitones()));
            errors.add(
                    Misconception.WRONG_SEVENTH,
                    triad.with(Interval.MAJOR_SEVENTH),
                    Phrase.sentence("The triad is right. The seventh lies {0}.", due));
            errors.add(
                    Misconception.MISSING_NOTE,
                    Optional.of(triad),
                    Phrase.sentence("The triad is right. The 7 asks for the seventh as well, {0}.", due));
        });
    }

    private static Coaching coaching(Numeral numeral, Chord chord, Chord goal) {
        Phrase way = reached(numeral, chord, goal);
        return Coaching.of(
                Phrase.sentence("Read it from behind: the slash says of."),
                Phrase.sentence("The goal is {0}.", goalNamed(numeral, goal)),
                way.then(Derivation.sizes(chord)),
                Phrase.of(
                        "The goal is {0}. {1} {2} {3}",
                        goalNamed(numeral, goal), way, Derivation.stack(chord), Derivation.chord(chord)));
    }
}
