package monochord.practice.skill;

import static monochord.practice.Misconception.DIRECTION_ONLY;
import static monochord.practice.Misconception.HALF_STEPS_COUNTED;
import static monochord.practice.Misconception.OTHER_VOICES;
import static monochord.practice.Misconception.WRONG_WAY;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.Motion;
import monochord.harmony.motion.MotionStep;
import monochord.harmony.motion.Passage;
import monochord.harmony.motion.VoiceMove;
import monochord.harmony.motion.VoicePair;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.MotionRubric;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** How the lowest and the highest voice move from one voiced chord to the next. */
final class OuterMotion implements Skill {
    private static final int OCTAVE = 8;
    private static final int TENTH = 10;
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
            "G2 B3 D4 G4 | Ab2 C4 Eb4 Ab4",
            "G2 D4 F4 B4 | C3 C4 E4 C5",
            "D3 C4 F4 A4 | G2 B3 F4 B4",
            "F2 C4 E4 A4 | G2 B3 F4 B4");
    private static final List<Passage> IN_C_MINOR = passages(
            "C3 Eb4 | C3 G4",
            "C3 G4 | D3 F4",
            "C3 Eb4 | F3 G4",
            "C3 G3 Eb4 C5 | Ab2 Ab3 Eb4 C5",
            "F3 F4 Ab4 C5 | G3 D4 G4 B4",
            "C3 Eb4 G4 C5 | G2 D4 G4 B4",
            "Ab2 C4 Eb4 Ab4 | G2 B3 D4 G4",
            "G2 D4 F4 B4 | C3 C4 Eb4 C5");

    private static List<Passage> passages(String... texts) {
        return List.of(texts).stream().map(Passage::parse).toList();
    }

    @Override
    public String id() {
        return "motion";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Motion of the outer voices");
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
        MotionStep step = passage.steps().get(0);
        if (passage.chords().size() != 2 || step.outer().isEmpty()) {
            throw Unreadable.because(
                    subject, 0, "two voiced chords", "two chords of two voices or more are compared", EXAMPLE);
        }
        VoicePair outer = step.outer().get();
        Phrase prompt = Phrase.sentence(
                "From {0} to {1}: how do the lowest and the highest voice move? Contrary, oblique, similar, parallel or still.",
                Phrase.row(step.from()), Phrase.row(step.to()));
        MotionRubric judge = new MotionRubric(
                outer.motion(), reason(outer), way(outer), given -> help(given, outer), () -> errors(step, outer));
        return Question.of(new Topic(id(), passage.toString(), key), AnswerForm.CHOICE, prompt, judge, coaching(outer));
    }

    private static List<ModelledError<Motion>> errors(MotionStep step, VoicePair outer) {
        List<ModelledError<Motion>> errors = new ArrayList<>();
        if (outer.motion() == Motion.SIMILAR) {
            errors.add(new ModelledError<>(
                    DIRECTION_ONLY,
                    Motion.PARALLEL,
                    () -> Phrase.sentence("The same way, yes. {0} Do the letters keep their distance?", way(outer))));
        } else if (outer.motion() == Motion.PARALLEL
                && outer.lower().semitones() != outer.upper().semitones()) {
            errors.add(new ModelledError<>(
                    HALF_STEPS_COUNTED,
                    Motion.SIMILAR,
                    () -> Phrase.sentence("By half steps it is not the same.").then(way(outer))));
        }
        for (Motion turned : withOneTurned(outer)) {
            errors.add(new ModelledError<>(
                    WRONG_WAY,
                    turned,
                    () -> Phrase.sentence("Look again which way each goes. The lowest {0}.", way(outer.lower()))));
        }
        for (VoicePair other : step.pairs()) {
            errors.add(new ModelledError<>(
                    OTHER_VOICES,
                    other.motion(),
                    () -> Phrase.sentence("So move {0}. The outer voices are {1}.", voices(other), voices(outer))));
        }
        return errors;
    }

    /** What comes out where one of the two is read backwards. */
    private static List<Motion> withOneTurned(VoicePair pair) {
        return switch (pair.motion()) {
            case CONTRARY -> List.of(Motion.SIMILAR, Motion.PARALLEL);
            case SIMILAR, PARALLEL -> List.of(Motion.CONTRARY);
            default -> List.of();
        };
    }

    private static Phrase voices(VoicePair pair) {
        return Phrase.of("{0} and {1}", line(pair.lower()), line(pair.upper()));
    }

    private static Phrase line(VoiceMove move) {
        return Phrase.joined("–", List.of(move.from(), move.to()));
    }

    private static Phrase reason(VoicePair pair) {
        return Phrase.sentence("{0}: {1}.", seen(pair), name(pair.motion()));
    }

    private static Phrase name(Motion motion) {
        return switch (motion) {
            case CONTRARY -> Phrase.of("contrary");
            case OBLIQUE -> Phrase.of("oblique");
            case SIMILAR -> Phrase.of("similar");
            case PARALLEL -> Phrase.of("parallel");
            case STILL -> Phrase.of("still");
        };
    }

    private static Phrase way(VoicePair pair) {
        return Phrase.sentence("{0}.", seen(pair));
    }

    private static Phrase seen(VoicePair pair) {
        Phrase ways = Phrase.of("the lowest {0}, the highest {1}", way(pair.lower()), way(pair.upper()));
        return pair.motion().isSameWay() ? Phrase.of("{0}; {1}", ways, intervals(pair)) : ways;
    }

    /** Both intervals, without the octaves that make their names hard to think of. */
    private static Phrase intervals(VoicePair pair) {
        Interval before = pair.lower().from().to(pair.upper().from()).size();
        Interval after = pair.lower().to().to(pair.upper().to()).size();
        int octaves = 0;
        while (Math.max(before.number(), after.number()) > TENTH
                && Math.min(before.number(), after.number()) > OCTAVE) {
            before = before.minus(Interval.OCTAVE);
            after = after.minus(Interval.OCTAVE);
            octaves++;
        }
        return octaves == 0
                ? Phrase.of("the interval is {0} and then {1}", Phrase.one(before), Phrase.one(after))
                : Phrase.of("octaves aside {0}, then {1}", Phrase.one(before), Phrase.one(after));
    }

    private static Phrase way(VoiceMove move) {
        if (move.isStill()) {
            return Phrase.of("stays on {0}", move.from());
        }
        return move.direction() > 0
                ? Phrase.of("goes up from {0} to {1}", move.from(), move.to())
                : Phrase.of("goes down from {0} to {1}", move.from(), move.to());
    }

    /** What of a wrong answer is right, and then one voice after the other. */
    private static List<Phrase> help(Motion given, VoicePair pair) {
        Motion wanted = pair.motion();
        Phrase lowest = Phrase.sentence("The lowest {0}.", way(pair.lower()));
        Phrase both = Phrase.sentence("The lowest {0}, the highest {1}.", way(pair.lower()), way(pair.upper()));
        if (given.isSameWay() && wanted.isSameWay()) {
            return List.of(
                    Phrase.sentence("Both go the same way, that is right. Do they keep their distance, by letters?"),
                    Phrase.sentence("Count the letters between them before and after."),
                    way(pair));
        }
        if (isBothMoving(given) && isBothMoving(wanted)) {
            return List.of(Phrase.sentence("Both move, that is right. Now which way each goes."), lowest, both);
        }
        return wanted == Motion.OBLIQUE && given != Motion.STILL
                ? List.of(Phrase.sentence("One of the two moves, that is right. Does the other?"), lowest, both)
                : List.of();
    }

    private static boolean isBothMoving(Motion motion) {
        return motion == Motion.CONTRARY || motion.isSameWay();
    }

    private static Coaching coaching(VoicePair pair) {
        return Coaching.of(
                Phrase.sentence("Follow one voice at a time with a finger: up, down, or not at all."),
                Phrase.sentence("The lowest {0}.", way(pair.lower())),
                Phrase.sentence(
                        "The lowest {0}, the highest {1}. If both go the same way, count the letters between them before and after.",
                        way(pair.lower()), way(pair.upper())),
                reason(pair));
    }
}
