package monochord.practice.skill.chord;

import java.util.List;
import java.util.Optional;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.answer.ChordDifference;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Derivation;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** A seventh chord spelled note by note, on the tonic ({@code maj7}), by symbol ({@code Abmaj7}) or by numeral. */
public final class SeventhSpelling implements Skill {
    private static final List<String> SUBJECTS = List.of("7", "maj7", "m7", "m7b5", "dim7", "m(maj7)");
    private static final List<Interval> SEVENTHS =
            List.of(Interval.MINOR_SEVENTH, Interval.MAJOR_SEVENTH, Interval.DIMINISHED_SEVENTH);

    @Override
    public String id() {
        return "seventh-spelling";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Spelling seventh chords");
    }

    @Override
    public List<String> subjects(Key key) {
        return SUBJECTS;
    }

    @Override
    public Question question(Key key, String subject) {
        ChordSubject about = ChordSubject.parse(subject, key, SUBJECTS, "a seventh chord", "Abmaj7");
        Chord chord = about.chord();
        if (!SUBJECTS.contains(chord.kind().toString()) || chord.isInverted()) {
            throw Unreadable.because(
                    subject, 0, "a seventh chord", "seventh chords in root position are asked", "Abmaj7");
        }
        Phrase prompt = Phrase.sentence("Spell {0}, root first.", chord);
        ChordRubric judge = ChordRubric.spelled(chord, () -> errors(chord));
        return Question.of(about.topic(id()), AnswerForm.NOTES, prompt, judge, coaching(chord));
    }

    private static Interval seventh(Chord chord) {
        return chord.kind().interval(7).orElseThrow();
    }

    private static List<ModelledError<Tones>> errors(Chord chord) {
        ChordErrors errors = new ChordErrors(chord);
        Optional<ChordKind> triad = chord.kind().without(seventh(chord));
        for (Interval other : SEVENTHS) {
            errors.add(
                    Misconception.WRONG_SEVENTH,
                    triad.flatMap(kind -> kind.with(other)),
                    Phrase.sentence("The triad is right, the seventh is not. {0}.", measured(chord)));
        }
        errors.add(Misconception.MISSING_NOTE, triad, Phrase.sentence("That is the triad. The seventh is missing."));
        for (String suffix : SUBJECTS) {
            Chord other = new Chord(chord.root(), ChordKind.parse(suffix));
            errors.add(
                    Misconception.WRONG_QUALITY,
                    other.tones(),
                    () -> Phrase.sentence("The root is right.").then(ChordDifference.firstOff(chord, other)));
        }
        return errors.lettersOnly(() -> Derivation.sizes(chord)).all();
    }

    private static Phrase measured(Chord chord) {
        Interval seventh = seventh(chord);
        return seventh.equals(Interval.MAJOR_SEVENTH)
                ? Phrase.of("{0} has its seventh a half step below the octave", chord)
                : seventh.equals(Interval.MINOR_SEVENTH)
                        ? Phrase.of("{0} has its seventh a whole step below the octave", chord)
                        : Phrase.of("{0} has its seventh three half steps below the octave", chord);
    }

    private static Coaching coaching(Chord chord) {
        List<NoteName> tones = chord.tones();
        return Coaching.of(
                Phrase.sentence("Four letters first: take one, leave one out, to the fourth."),
                Phrase.sentence("The root is {0}. Build its triad before you think of the seventh.", tones.get(0)),
                Phrase.sentence("The triad is {0}. {1}.", Phrase.row(tones.subList(0, 3)), measured(chord)),
                Phrase.sentence("{0} {1}, {2}.", Derivation.stack(chord), measured(chord), tones.get(3))
                        .then(Derivation.chord(chord)));
    }
}
