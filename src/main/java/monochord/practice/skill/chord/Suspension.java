package monochord.practice.skill.chord;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Walk;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** A suspended chord spelled note by note, on the tonic ({@code sus4}), by symbol or by numeral ({@code Vsus4}). */
public final class Suspension implements Skill {
    private static final List<String> SUBJECTS = List.of("sus4", "sus2", "7sus4");

    @Override
    public String id() {
        return "suspension";
    }

    @Override
    public String title() {
        return "Suspensions";
    }

    @Override
    public List<String> subjects(Key key) {
        List<String> subjects = new ArrayList<>(SUBJECTS);
        subjects.addAll(List.of("Vsus4", "V7sus4"));
        return subjects;
    }

    @Override
    public Question question(Key key, String subject) {
        ChordSubject about = ChordSubject.parse(subject, key, SUBJECTS, "a suspended chord", "Gsus4");
        Chord chord = about.chord();
        if (!SUBJECTS.contains(chord.kind().toString()) || chord.isInverted()) {
            throw Unreadable.because(subject, 0, "a suspended chord", "sus4, sus2 and 7sus4 are asked", "Gsus4");
        }
        String prompt = "Spell " + Say.chord(chord) + ", root first.";
        ChordRubric judge = ChordRubric.spelled(chord, () -> slips(chord));
        return Question.of(about.topic(id()), Form.NOTES, prompt, judge, coaching(chord));
    }

    private static boolean isFourth(Chord chord) {
        return chord.kind().holds(Interval.PERFECT_FOURTH);
    }

    private static Interval suspended(Chord chord) {
        return isFourth(chord) ? Interval.PERFECT_FOURTH : Interval.MAJOR_SECOND;
    }

    private static List<Slip<Tones>> slips(Chord chord) {
        Slips slips = new Slips(chord);
        for (Interval third : List.of(Interval.MAJOR_THIRD, Interval.MINOR_THIRD)) {
            NoteName kept = chord.root().plus(third);
            List<NoteName> both = new ArrayList<>(chord.tones());
            both.add(1, kept);
            slips.add(
                    Misconception.THIRD_KEPT,
                    both,
                    () -> "The " + name(chord) + " is there, and so is the third, " + Say.note(kept)
                            + ": it has to go. " + replaced(chord));
            slips.add(
                    Misconception.THIRD_KEPT,
                    opened(chord).flatMap(kind -> kind.with(third)),
                    "The third, " + Say.note(kept) + ", is still there. " + replaced(chord));
        }
        Interval other = isFourth(chord) ? Interval.MAJOR_SECOND : Interval.PERFECT_FOURTH;
        slips.add(
                Misconception.WRONG_DEGREE,
                opened(chord).flatMap(kind -> kind.with(other)),
                "That suspends the " + (isFourth(chord) ? "second" : "fourth") + ". " + replaced(chord));
        slips.add(
                Misconception.WRONG_DEGREE,
                opened(chord).flatMap(kind -> kind.with(Interval.AUGMENTED_FOURTH)),
                "The fourth is a perfect one, five half steps above the root. " + replaced(chord));
        slips.add(
                Misconception.MISSING_NOTE,
                chord.kind().without(Interval.MINOR_SEVENTH).filter(kind -> !kind.equals(chord.kind())),
                "The suspension is right. The 7 asks for the minor seventh as well.");
        return slips.lettersOnly(() -> Walk.sizes(chord)).all();
    }

    private static Optional<ChordKind> opened(Chord chord) {
        return chord.kind().without(suspended(chord));
    }

    private static String name(Chord chord) {
        return isFourth(chord) ? "fourth" : "second";
    }

    private static String replaced(Chord chord) {
        return "In " + Say.chord(chord) + " the " + name(chord) + " stands in place of the third.";
    }

    private static Coaching coaching(Chord chord) {
        NoteName third = chord.root().plus(Interval.MAJOR_THIRD);
        NoteName tone = chord.root().plus(suspended(chord));
        List<NoteName> framed =
                chord.tones().stream().filter(note -> !note.equals(tone)).toList();
        String later = isFourth(chord) ? " falls to the third, " : " rises to the third, ";
        return Coaching.of(
                "A suspended chord has no third. Another note sits in its place.",
                "The number says which: the " + name(chord) + " above " + Say.note(chord.root()) + ".",
                Say.list(framed) + " are there in any case. Between them comes the " + name(chord) + ", "
                        + Say.step(suspended(chord).semitones()) + " above the root.",
                Walk.stack(chord) + " " + replaced(chord) + " Later " + Say.note(tone) + later + Say.note(third) + ". "
                        + Walk.chord(chord));
    }
}
