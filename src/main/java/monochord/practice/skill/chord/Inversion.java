package monochord.practice.skill.chord;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.answer.InversionRubric;
import monochord.practice.answer.ModelledError;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Notes from the bass up, to be named with root and bass. The subject is a slash chord or a numeral with figures. */
public final class Inversion implements Skill {
    private static final List<String> IN_MAJOR = List.of("I6", "IV6", "V6", "I64", "vi6", "ii6", "V65", "V43", "V42");
    private static final List<String> IN_MINOR = List.of("i6", "iv6", "V6", "i64", "VI6", "V65", "V42");

    @Override
    public String id() {
        return "inversion";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Inversions");
    }

    @Override
    public List<String> subjects(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    @Override
    public Question question(Key key, String subject) {
        ChordSubject about = ChordSubject.parse(subject, key, List.of(), "an inverted chord", "C/E");
        Chord chord = about.chord();
        boolean stacked = chord.kind().intervals().stream().allMatch(interval -> interval.number() % 2 == 1);
        if (!chord.isInverted() || !chord.holds(chord.bass()) || !stacked) {
            throw Unreadable.because(
                    subject, 0, "an inverted chord", "one of its own tones lies in the bass, not the root", "C/E");
        }
        Phrase prompt = Phrase.sentence(
                "From the bass up: {0}. Which chord is it? Name it with its bass, as in {1}.",
                Phrase.row(chord.fromBass()), InversionRubric.exampleFor(chord));
        InversionRubric judge = new InversionRubric(chord, key, () -> errors(chord));
        return Question.of(about.topic(id()), AnswerForm.CHORD, prompt, judge, coaching(chord));
    }

    private static List<ModelledError<Chord>> errors(Chord chord) {
        List<ModelledError<Chord>> errors = new ArrayList<>();
        for (Chord onBass : onBass(chord)) {
            errors.add(new ModelledError<>(
                    Misconception.BASS_FOR_ROOT,
                    onBass,
                    () -> Phrase.sentence(
                            "{0} lies in the bass, yet it is not the root. Turn the notes round until only thirds are left.",
                            chord.bass())));
        }
        for (NoteName bass : chord.tones()) {
            errors.add(new ModelledError<>(
                    Misconception.WRONG_BASS,
                    chord.over(bass),
                    () -> Phrase.sentence(
                            "The chord is right. The lowest note is not {0}: look at the one that comes first.",
                            bass)));
        }
        chord.kind()
                .interval(7)
                .flatMap(seventh -> chord.kind().without(seventh))
                .ifPresent(triad -> errors.add(new ModelledError<>(
                        Misconception.MISSING_NOTE,
                        new Chord(chord.root(), triad, chord.bass()),
                        () -> Phrase.sentence(
                                "Root and bass are right. Count the notes: there is a seventh among them."))));
        return errors;
    }

    /** The bass taken for a root: with the plain triads on it. */
    private static List<Chord> onBass(Chord chord) {
        return List.of(ChordKind.MAJOR, ChordKind.MINOR, ChordKind.DIMINISHED).stream()
                .map(kind -> new Chord(chord.bass(), kind))
                .toList();
    }

    private static Coaching coaching(Chord chord) {
        return Coaching.of(
                Phrase.sentence("Turn the notes round until only thirds are left: every other letter."),
                Phrase.sentence("Stacked in thirds: {0}.", Phrase.row(chord.tones())),
                Phrase.sentence("The root is {0}; the lowest note goes behind the slash.", chord.root()),
                Phrase.sentence(
                        "Stacked in thirds the notes are {0}: {1}. In the bass lies {2}, so it is written {3}.",
                        Phrase.row(chord.tones()), chord.over(chord.root()), chord.bass(), chord));
    }
}
