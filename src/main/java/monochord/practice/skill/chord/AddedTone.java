package monochord.practice.skill.chord;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Walk;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A triad with one tone more, spelled, on the tonic ({@code add9}), by symbol or by numeral ({@code IVadd9}).
 *
 * <p>{@code 2} is asked as charts write it. Most players add the ninth and keep the third; some play it suspended. Both are
 * taken: common practice, no source.
 */
public final class AddedTone implements Skill {
    private static final List<String> SUBJECTS = List.of("add9", "6", "m(add9)", "m6", "add4", "2");
    private static final String TWO = "2";

    @Override
    public String id() {
        return "added-tone";
    }

    @Override
    public String title() {
        return "Added tones";
    }

    @Override
    public List<String> subjects(Key key) {
        return SUBJECTS;
    }

    @Override
    public Question question(Key key, String subject) {
        boolean two = subject.strip().toLowerCase(Locale.ROOT).equals(TWO);
        ChordSubject about = ChordSubject.parse(subject, key, SUBJECTS, "a chord with an added tone", "Cadd9");
        Chord chord = about.chord();
        if (!isAsked(chord)) {
            throw Unreadable.because(
                    subject, 0, "a chord with an added tone", "add9, 6, m(add9), m6 and add4 are asked", "Cadd9");
        }
        String named = two ? chord.root().write(Signs.MUSIC) + TWO : Say.chord(chord);
        String prompt = "Spell " + named + ", root first.";
        Topic topic = about.topic(id());
        ChordRubric judge = two
                ? ChordRubric.spelled(
                        chord,
                        new Chord(chord.root(), ChordKind.parse("sus2")),
                        named + " is played so too, without the third. Most players keep it: " + Say.row(chord.tones())
                                + ".",
                        () -> slips(chord))
                : ChordRubric.spelled(chord, () -> slips(chord));
        return Question.of(topic, Form.NOTES, prompt, judge, coaching(chord));
    }

    private static boolean isAsked(Chord chord) {
        return !chord.isInverted()
                && SUBJECTS.stream().map(ChordKind::parse).anyMatch(kind -> kind.equals(chord.kind()));
    }

    private static Interval added(Chord chord) {
        return chord.kind().intervals().stream()
                .filter(interval -> !chord.kind().triad().holds(interval))
                .findFirst()
                .orElseThrow();
    }

    private static ChordKind triad(Chord chord) {
        return chord.kind().triad();
    }

    private static List<Slip<Tones>> slips(Chord chord) {
        Slips slips = new Slips(chord);
        ChordKind triad = triad(chord);
        Interval added = added(chord);
        String here = told(chord) + ".";
        slips.add(Misconception.MISSING_NOTE, Optional.of(triad), "That is the plain triad. " + here);
        Interval third = chord.kind().interval(3).orElseThrow();
        slips.add(
                Misconception.MISSING_NOTE,
                chord.kind().without(third),
                "Added means on top of the triad, so the third stays.");
        for (Interval seventh : List.of(Interval.MINOR_SEVENTH, Interval.MAJOR_SEVENTH)) {
            slips.add(
                    Misconception.EXTRA_NOTE,
                    chord.kind().with(seventh),
                    "There is a seventh in it, " + Say.note(chord.root().plus(seventh)) + ". Added means no seventh.");
        }
        for (Interval next : List.of(Interval.MINOR_SEVENTH, Interval.MAJOR_SEVENTH)) {
            slips.add(
                    added.number() == 6 ? Misconception.COUNTED_FROM_ZERO : Misconception.WRONG_DEGREE,
                    triad.with(next),
                    added.number() == 6
                            ? "That adds the seventh: the root counts as 1."
                            : "That adds the seventh. " + here);
        }
        for (Interval lowered : List.of(Interval.MINOR_SECOND, Interval.MINOR_SIXTH, Interval.AUGMENTED_FOURTH)) {
            if (lowered.staffSteps() == added.withinOctave().staffSteps()) {
                slips.add(Misconception.WRONG_QUALITY, triad.with(lowered), "The letter is right. " + here);
            }
        }
        return slips.lettersOnly(() -> Walk.sizes(new Chord(chord.root(), triad)) + " " + here)
                .all();
    }

    private static String told(Chord chord) {
        Interval added = added(chord);
        String where = added.semitones() > 12
                ? Say.step(added.semitones() - 12) + " above the octave of the root"
                : Say.halfSteps(added.semitones()) + " above the root";
        return "The " + added.inWords().split(" ")[1] + " lies " + where;
    }

    private static Coaching coaching(Chord chord) {
        Chord plain = new Chord(chord.root(), triad(chord));
        return Coaching.of(
                "The triad first, all of it; then one note more, and no seventh.",
                "Count letters from the root, the root as 1; beyond the octave 9 is 2 again.",
                "The triad is " + Say.row(plain.tones()) + ". " + told(chord) + ".",
                "The triad is " + Say.row(plain.tones()) + ". " + told(chord) + ": "
                        + Say.note(chord.root().plus(added(chord))) + ". " + Walk.chord(chord));
    }
}
