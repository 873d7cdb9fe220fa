package monochord.practice.skill;

import static monochord.practice.Misconception.RELATIVE_FOR_PARALLEL;
import static monochord.practice.Misconception.WRONG_SOURCE;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Borrowing;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.answer.SourceRubric;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** The parallel scale a borrowed chord comes from. */
final class BorrowedSource implements Skill {
    @Override
    public String id() {
        return "borrowed-source";
    }

    @Override
    public String title() {
        return "Where a chord is borrowed from";
    }

    @Override
    public List<String> subjects(Key key) {
        return BorrowedSubject.all(key);
    }

    @Override
    public List<Key> keys() {
        return BorrowedSubject.keys();
    }

    @Override
    public Question question(Key key, String subject) {
        BorrowedSubject about = BorrowedSubject.parse(subject, key);
        List<Scale> sources = Borrowing.borrowedFrom(about.chord(), key);
        if (sources.isEmpty()) {
            throw Unreadable.because(subject, 0, "a borrowed chord", "no parallel scale holds it", "bVI");
        }
        String prompt = about.named() + " is " + Say.row(about.chord().tones()) + ". Which scale on "
                + Say.note(key.tonic()) + " does it come from? Where there are several, the nearest.";
        SourceRubric judge = new SourceRubric(about.chord(), key, sources, () -> slips(about));
        return Question.of(
                new Topic(id(), about.text(), key), Form.CHOICE, prompt, judge, coaching(about, sources.get(0)));
    }

    private static List<Slip<Scale>> slips(BorrowedSubject about) {
        List<Slip<Scale>> slips = new ArrayList<>();
        Key key = about.key();
        Scale relative = key.relative().scale();
        slips.add(new Slip<>(
                RELATIVE_FOR_PARALLEL,
                relative,
                () -> Say.scale(relative)
                        + " is the relative: it has the notes you began with, so there is nothing in it to borrow. "
                        + "The parallel stands on " + Say.note(key.tonic()) + "."));
        for (Scale other : Borrowing.parallels(key)) {
            slips.add(new Slip<>(WRONG_SOURCE, other, () -> missing(about.chord(), other)));
        }
        slips.add(new Slip<>(WRONG_SOURCE, key.scale(), () -> missing(about.chord(), key.scale())));
        return slips;
    }

    private static String missing(Chord chord, Scale scale) {
        List<NoteName> missing =
                chord.tones().stream().filter(tone -> !scale.holds(tone)).toList();
        return Say.scale(scale) + " has "
                + Say.words(missing.stream().map(note -> "no " + Say.note(note)).toList()) + ", and the chord is "
                + Say.row(chord.tones()) + ".";
    }

    private static Coaching coaching(BorrowedSubject about, Scale source) {
        List<Degree> changed = Borrowing.borrowed(about.chord(), about.key()).changed();
        String degrees = Say.words(
                changed.stream().map(degree -> degree.write(Signs.MUSIC)).toList());
        String row = Say.row(source.tones());
        return Coaching.of(
                "Which of its notes does the key not have?",
                "From outside the key: " + degrees + ".",
                "On " + Say.note(about.key().tonic()) + " you need a scale with " + degrees
                        + " and as few other changes as can be.",
                "The chord is " + Say.row(about.chord().tones()) + ". From outside the key: " + degrees + ". "
                        + Say.scale(source) + " is " + row + ": it holds them all.");
    }
}
