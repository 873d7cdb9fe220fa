package monochord.practice.skill;

import static monochord.practice.Misconception.DIRECTION_ONLY;
import static monochord.practice.Misconception.HALF_STEPS_COUNTED;
import static monochord.practice.Misconception.OTHER_VOICES;
import static monochord.practice.Misconception.WRONG_WAY;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.Motion;
import monochord.harmony.motion.Move;
import monochord.harmony.motion.Pair;
import monochord.harmony.motion.Passage;
import monochord.harmony.motion.Step;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.MotionRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** How the lowest and the highest voice move from one voiced chord to the next. */
final class OuterMotion implements Skill {
    private static final String EXAMPLE = "C3 G3 E4 C5 | A2 A3 E4 C5";
    private static final int TOO_HIGH = 6;
    private static final List<Passage> IN_C_MAJOR = passages(
            "C3 E4 | C3 G4",
            "C3 G4 | D3 F4",
            "C3 E4 | D3 F4",
            "C3 E4 | F3 G4",
            "C3 G3 E4 C5 | A2 A3 E4 C5",
            "F3 F4 A4 C5 | G3 D4 G4 B4",
            "C3 E4 G4 C5 | G2 D4 G4 B4",
            "F3 C4 F4 A4 | G3 D4 G4 B4",
            "G2 B3 D4 G4 | Ab2 C4 Eb4 Ab4");
    private static final List<Passage> IN_C_MINOR = passages(
            "C3 Eb4 | C3 G4",
            "C3 G4 | D3 F4",
            "C3 Eb4 | F3 G4",
            "C3 G3 Eb4 C5 | Ab2 Ab3 Eb4 C5",
            "F3 F4 Ab4 C5 | G3 D4 G4 B4",
            "C3 Eb4 G4 C5 | G2 D4 G4 B4",
            "Ab2 C4 Eb4 Ab4 | G2 B3 D4 G4");

    private static List<Passage> passages(String... texts) {
        return List.of(texts).stream().map(Passage::parse).toList();
    }

    @Override
    public String id() {
        return "motion";
    }

    @Override
    public String title() {
        return "Motion of the outer voices";
    }

    @Override
    public List<String> subjects(Key key) {
        Interval up = NoteName.C.to(key.tonic());
        Interval nearest = up.semitones() > TOO_HIGH ? up.minus(Interval.OCTAVE) : up;
        return (key.isMinor() ? IN_C_MINOR : IN_C_MAJOR)
                .stream().map(passage -> moved(passage, nearest).toString()).toList();
    }

    private static Passage moved(Passage passage, Interval by) {
        return new Passage(passage.chords().stream()
                .map(chord -> chord.stream().map(pitch -> pitch.plus(by)).toList())
                .toList());
    }

    @Override
    public Question question(Key key, String subject) {
        Passage passage = Passage.parse(subject.strip());
        Step step = passage.steps().get(0);
        if (passage.chords().size() != 2 || step.outer().isEmpty()) {
            throw Unreadable.because(
                    subject, 0, "two voiced chords", "two chords of two voices or more are compared", EXAMPLE);
        }
        Pair outer = step.outer().get();
        String prompt = "From " + Passage.write(step.from(), Signs.MUSIC) + " to "
                + Passage.write(step.to(), Signs.MUSIC)
                + ": how do the lowest and the highest voice move? Contrary, oblique, similar, parallel or still.";
        MotionRubric judge = new MotionRubric(outer.motion(), reason(outer), way(outer), () -> slips(step, outer));
        return Question.of(new Topic(id(), passage.toString(), key), Form.CHOICE, prompt, judge, coaching(outer));
    }

    private static List<Slip<Motion>> slips(Step step, Pair outer) {
        List<Slip<Motion>> slips = new ArrayList<>();
        if (outer.motion() == Motion.SIMILAR) {
            slips.add(new Slip<>(
                    DIRECTION_ONLY,
                    Motion.PARALLEL,
                    () -> "The same way, yes. " + way(outer) + " Do the letters keep their distance?"));
        } else if (outer.motion() == Motion.PARALLEL
                && outer.lower().semitones() != outer.upper().semitones()) {
            slips.add(new Slip<>(
                    HALF_STEPS_COUNTED, Motion.SIMILAR, () -> "By half steps it is not the same. " + way(outer)));
        }
        for (Motion turned : withOneTurned(outer)) {
            slips.add(new Slip<>(
                    WRONG_WAY, turned, () -> "Look again which way each goes. The lowest " + way(outer.lower()) + "."));
        }
        for (Pair other : step.pairs()) {
            slips.add(new Slip<>(
                    OTHER_VOICES,
                    other.motion(),
                    () -> "So move " + voices(other) + ". The outer voices are " + voices(outer) + "."));
        }
        return slips;
    }

    /** What comes out where one of the two is read backwards. */
    private static List<Motion> withOneTurned(Pair pair) {
        return switch (pair.motion()) {
            case CONTRARY -> List.of(Motion.SIMILAR, Motion.PARALLEL);
            case SIMILAR, PARALLEL -> List.of(Motion.CONTRARY);
            default -> List.of();
        };
    }

    private static String voices(Pair pair) {
        return line(pair.lower()) + " and " + line(pair.upper());
    }

    private static String line(Move move) {
        return say(move.from()) + "–" + say(move.to());
    }

    private static String reason(Pair pair) {
        return seen(pair) + ": " + pair.motion() + ".";
    }

    private static String way(Pair pair) {
        return seen(pair) + ".";
    }

    private static String seen(Pair pair) {
        String ways = "The lowest " + way(pair.lower()) + ", the highest " + way(pair.upper());
        return pair.motion().isSameWay()
                ? ways + "; the interval is "
                        + interval(pair.lower().from(), pair.upper().from()) + " and then "
                        + interval(pair.lower().to(), pair.upper().to())
                : ways;
    }

    private static String interval(Pitch low, Pitch high) {
        return Say.interval(low.to(high).size());
    }

    private static String way(Move move) {
        return move.isStill()
                ? "stays on " + say(move.from())
                : "goes " + (move.direction() > 0 ? "up" : "down") + " from " + say(move.from()) + " to "
                        + say(move.to());
    }

    private static String say(Pitch pitch) {
        return pitch.write(Signs.MUSIC);
    }

    private static Coaching coaching(Pair pair) {
        return Coaching.of(
                "Follow one voice at a time with a finger: up, down, or not at all.",
                "The lowest " + way(pair.lower()) + ".",
                "The lowest " + way(pair.lower()) + ", the highest " + way(pair.upper())
                        + ". If both go the same way, count the letters between them before and after.",
                reason(pair));
    }
}
