package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.WRONG_KEY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.DegreeRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.teaching.Own;
import monochord.practice.teaching.Walk;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** The degree a chord stands on, as numeral or number. The subject is a degree ({@code 6}) or a chord ({@code Em}). */
final class ChordDegree implements Skill {
    @Override
    public String id() {
        return "chord-degree";
    }

    @Override
    public String title() {
        return "The degree of a chord";
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
        String prompt =
                "In " + Say.key(key) + ", which degree is " + Say.chord(chord) + "? A numeral or a number will do.";
        String way = Walk.to(key.degreeOf(chord.root()), key);
        DegreeRubric judge = new DegreeRubric(chord, key, way, () -> slips(chord, key));
        return Question.of(new Topic(id(), canonical, key), Form.NUMERAL, prompt, judge, coaching(chord, key));
    }

    private static Chord onDegree(String text, Key key) {
        try {
            return BandNumber.parse(text, key).in(key);
        } catch (Unreadable unreadable) {
            return Numeral.parse(text).in(key);
        }
    }

    private static List<Slip<Numeral>> slips(Chord chord, Key key) {
        List<Slip<Numeral>> slips = new ArrayList<>();
        int number = key.degreeOf(chord.root()).number();
        if (number > 1) {
            Numeral below = Numeral.onDegree(Own.triad(number - 1, key), key);
            slips.add(new Slip<>(COUNTED_FROM_ZERO, below, () -> "One too few: the tonic counts as 1."));
        }
        Key relative = key.relative();
        Numeral inRelative = Numeral.onDegree(chord, relative);
        slips.add(new Slip<>(
                WRONG_KEY,
                inRelative,
                () -> "That is its place in " + Say.key(relative) + ". Here the tonic is " + Say.note(key.tonic())
                        + ": count from there."));
        return slips;
    }

    private static String reason(Chord chord, Key key) {
        Degree degree = key.degreeOf(chord.root());
        return Walk.to(degree, key) + " So " + Say.chord(chord) + " is "
                + Numeral.onDegree(chord, key).write(Signs.MUSIC) + ".";
    }

    private static Coaching coaching(Chord chord, Key key) {
        Degree degree = key.degreeOf(chord.root());
        String quality = chord.kind().quality().toString();
        return Coaching.of(
                "Count letters from the tonic up to the root of the chord, with the tonic as 1.",
                "The tonic is " + Say.note(key.tonic()) + ", the root is " + Say.note(chord.root()) + ".",
                Walk.to(degree, key) + " The chord is " + quality
                        + (quality.equals("major") ? ": capitals." : ": small letters."),
                reason(chord, key));
    }
}
