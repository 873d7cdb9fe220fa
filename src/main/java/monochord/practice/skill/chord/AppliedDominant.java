package monochord.practice.skill.chord;

import java.util.List;
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
import monochord.practice.teaching.Own;
import monochord.practice.teaching.Walk;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;
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
    public String title() {
        return "Applied dominants";
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
        String prompt = "Which chord is " + numeral.write(Signs.MUSIC) + " in " + Say.key(key) + "?";
        ChordRubric judge = ChordRubric.named(
                chord,
                "Find " + goalNamed(numeral, goal) + " first. " + reached(numeral, chord, goal),
                () -> slips(numeral, key));
        Topic topic = new Topic(id(), numeral.toString(), key);
        return Question.of(topic, Form.CHORD, prompt, judge, coaching(numeral, chord, goal));
    }

    private static String goalNamed(Numeral numeral, Chord goal) {
        return numeral.target().write(Signs.MUSIC) + ", " + Say.chord(goal) + ",";
    }

    private static boolean isDominant(Numeral numeral) {
        return numeral.degree() == 5;
    }

    private static String reached(Numeral numeral, Chord chord, Chord goal) {
        String distance = isDominant(numeral) ? "A fifth above " : "A half step below ";
        return distance + Say.note(goal.root()) + " is " + Say.note(chord.root()) + ".";
    }

    private static List<Slip<Tones>> slips(Numeral numeral, Key key) {
        Chord chord = numeral.in(key);
        Chord goal = numeral.target().in(key);
        Slips slips = new Slips(chord);
        String way = reached(numeral, chord, goal);
        Chord ofTonic =
                Numeral.of(numeral.degree(), numeral.alteration(), chord.kind()).in(key);
        slips.add(
                Misconception.SLASH_FOR_BASS,
                ofTonic.tones(),
                () -> Say.chord(ofTonic) + " is " + numeral.write(Signs.MUSIC).split("/")[0] + " of " + Say.key(key)
                        + " itself. Behind the slash of a numeral stands the chord it leads to.");
        Chord own = own(chord, key);
        slips.add(
                Misconception.QUALITY_OF_THE_KEY,
                own.tones(),
                () -> Say.chord(own) + " is what the key has there. "
                        + (own.root().equals(chord.root())
                                ? "The root is right; a dominant needs its leading note, whatever the key says."
                                : way));
        slips.add(
                Misconception.WRONG_DEGREE,
                new Chord(goal.root(), chord.kind()).tones(),
                () -> "That stands on the goal itself. " + way);
        seventh(chord, slips);
        return slips.lettersOnly(() -> Walk.sizes(chord)).all();
    }

    /** The chord with the key's own tones on the same letters. */
    private static Chord own(Chord chord, Key key) {
        var tones = chord.tones().stream()
                .map(tone -> key.note(key.degreeOf(tone).number()))
                .toList();
        return ChordKind.of(tones.get(0), tones)
                .map(kind -> new Chord(tones.get(0), kind))
                .orElse(Own.triad(key.degreeOf(chord.root()).number(), key));
    }

    private static void seventh(Chord chord, Slips slips) {
        Optional<Interval> seventh = chord.kind().interval(7);
        seventh.flatMap(interval -> chord.kind().without(interval)).ifPresent(triad -> {
            String due = Say.count(seventh.orElseThrow().semitones()) + " half steps above the root";
            slips.add(
                    Misconception.WRONG_SEVENTH,
                    triad.with(Interval.MAJOR_SEVENTH),
                    "The triad is right. The seventh lies " + due + ".");
            slips.add(
                    Misconception.MISSING_NOTE,
                    Optional.of(triad),
                    "The triad is right. The 7 asks for the seventh as well, " + due + ".");
        });
    }

    private static Coaching coaching(Numeral numeral, Chord chord, Chord goal) {
        String way = reached(numeral, chord, goal);
        return Coaching.of(
                "Read it from behind: the slash says of.",
                "The goal is " + goalNamed(numeral, goal).replaceAll(",$", "") + ".",
                way + " " + Walk.sizes(chord),
                "The goal is " + goalNamed(numeral, goal).replaceAll(",$", "") + ". " + way + " " + Walk.stack(chord)
                        + " " + Walk.chord(chord));
    }
}
