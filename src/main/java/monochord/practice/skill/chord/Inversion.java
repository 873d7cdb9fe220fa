package monochord.practice.skill.chord;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.answer.InversionRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
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
    public String title() {
        return "Inversions";
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
        String prompt = "From the bass up: " + Say.row(chord.fromBass())
                + ". Which chord is it? Name it with its bass, as in " + InversionRubric.exampleFor(chord) + ".";
        InversionRubric judge = new InversionRubric(chord, () -> slips(chord));
        return Question.of(about.topic(id()), Form.CHORD, prompt, judge, coaching(chord));
    }

    private static List<Slip<Chord>> slips(Chord chord) {
        List<Slip<Chord>> slips = new ArrayList<>();
        for (Chord onBass : onBass(chord)) {
            slips.add(
                    new Slip<>(
                            Misconception.BASS_FOR_ROOT,
                            onBass,
                            () -> Say.note(chord.bass())
                                    + " lies in the bass, yet it is not the root. Turn the notes round until only thirds are left."));
        }
        for (NoteName bass : chord.tones()) {
            slips.add(new Slip<>(
                    Misconception.WRONG_BASS,
                    chord.over(bass),
                    () -> "The chord is right. The lowest note is not " + Say.note(bass)
                            + ": look at the one that comes first."));
        }
        chord.kind()
                .interval(7)
                .flatMap(seventh -> chord.kind().without(seventh))
                .ifPresent(triad -> slips.add(new Slip<>(
                        Misconception.MISSING_NOTE,
                        new Chord(chord.root(), triad, chord.bass()),
                        () -> "Root and bass are right. Count the notes: there is a seventh among them.")));
        return slips;
    }

    /** The bass taken for a root: with the plain triads on it. */
    private static List<Chord> onBass(Chord chord) {
        return List.of(ChordKind.MAJOR, ChordKind.MINOR, ChordKind.DIMINISHED).stream()
                .map(kind -> new Chord(chord.bass(), kind))
                .toList();
    }

    private static Coaching coaching(Chord chord) {
        return Coaching.of(
                "Turn the notes round until only thirds are left: every other letter.",
                "Stacked in thirds: " + Say.row(chord.tones()) + ".",
                "The root is " + Say.note(chord.root()) + "; the lowest note goes behind the slash.",
                "Stacked in thirds the notes are " + Say.row(chord.tones()) + ": "
                        + Say.chord(chord.over(chord.root())) + ". In the bass lies " + Say.note(chord.bass())
                        + ", so it is written " + Say.chord(chord) + ".");
    }
}
