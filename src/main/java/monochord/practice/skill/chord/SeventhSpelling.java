package monochord.practice.skill.chord;

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
    public String title() {
        return "Spelling seventh chords";
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
        String prompt = "Spell " + Say.chord(chord) + ", root first.";
        ChordRubric judge = ChordRubric.spelled(chord, () -> slips(chord));
        return Question.of(about.topic(id()), Form.NOTES, prompt, judge, coaching(chord));
    }

    private static Interval seventh(Chord chord) {
        return chord.kind().interval(7).orElseThrow();
    }

    private static List<Slip<Tones>> slips(Chord chord) {
        Slips slips = new Slips(chord);
        Optional<ChordKind> triad = chord.kind().without(seventh(chord));
        for (Interval other : SEVENTHS) {
            slips.add(
                    Misconception.WRONG_SEVENTH,
                    triad.flatMap(kind -> kind.with(other)),
                    "The triad is right, the seventh is not. " + measured(chord) + ".");
        }
        slips.add(Misconception.MISSING_NOTE, triad, "That is the triad. The seventh is missing.");
        for (String suffix : SUBJECTS) {
            slips.add(
                    Misconception.WRONG_QUALITY,
                    Optional.of(ChordKind.parse(suffix)),
                    "The root is right, the quality is not. " + Walk.sizes(chord));
        }
        return slips.lettersOnly(() -> Walk.sizes(chord)).all();
    }

    private static String measured(Chord chord) {
        String below = seventh(chord).equals(Interval.MAJOR_SEVENTH)
                ? "a half step below the octave"
                : seventh(chord).equals(Interval.MINOR_SEVENTH)
                        ? "a whole step below the octave"
                        : "three half steps below the octave";
        return Say.chord(chord) + " has its seventh " + below;
    }

    private static Coaching coaching(Chord chord) {
        List<NoteName> tones = chord.tones();
        return Coaching.of(
                "Four letters first: take one, leave one out, to the fourth.",
                "The root is " + Say.note(tones.get(0)) + ". Build its triad before you think of the seventh.",
                "The triad is " + Say.row(tones.subList(0, 3)) + ". " + measured(chord) + ".",
                Walk.stack(chord) + " " + measured(chord) + ", " + Say.note(tones.get(3)) + ". " + Walk.chord(chord));
    }
}
