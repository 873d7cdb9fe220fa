package monochord.course;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;

/**
 * At most four questions to somebody new: by what names notes go, one scale, one chord of a key, one borrowed chord. By one
 * try and a second they find the lesson to begin with; no single answer leads past more than two books. Those about music
 * are questions like any other, judged and kept.
 */
public final class FirstQuestions implements Activity {
    private static final Pattern PASSES = Pattern.compile(
            "(?i)(no|nope|not yet|pass|next|(i'?m )?not sure|i (do not|don'?t) know|idk|dunno|no idea|\\?)[.!]?");
    private static final Key KEY = Key.major(NoteName.of('D', 0));

    /** Where a learner begins. */
    public enum StartingPoint {
        BEGINNING("1.1"),
        LETTERS("1.2"),
        CHORDS("2.1"),
        MOVING("3.1"),
        COLOUR("5.1");

        private final String lesson;

        StartingPoint(String lesson) {
            this.lesson = lesson;
        }

        /** The number of its first lesson. */
        public String lesson() {
            return lesson;
        }
    }

    /** What is being asked. */
    public enum FirstTopic {
        NAMES,
        SCALE,
        DEGREE,
        CHORD
    }

    /** What follows. */
    public sealed interface FirstStep {
        /** A question of that topic. */
        record PutQuestion(FirstTopic topic, Question question) implements FirstStep {}

        /** The same question once more. */
        record Again() implements FirstStep {}

        /** Nothing more is asked: the learner's place is found. */
        record PlaceFound(StartingPoint level) implements FirstStep {}
    }

    private FirstTopic topic = FirstTopic.NAMES;
    /** On the last answer to the open question that could be read. */
    private Verdict last;

    public boolean asksForNames() {
        return topic == FirstTopic.NAMES;
    }

    @Override
    public int nearness() {
        return 0;
    }

    /** Which of the questions is open. */
    public Position place() {
        return new Position(Position.Unit.QUESTION, topic.ordinal() + 1, FirstTopic.values().length);
    }

    /** What the names were called by a word or by an example; none if the line is no answer to that. */
    public static Optional<NoteNaming> naming(String text) {
        String line = text.strip().toLowerCase(Locale.ROOT);
        return switch (line.replaceAll("[\\s,.()]+", " ").strip()) {
            case "a b c", "abc", "letters", "a b c d e f g", "c d e f g a b c" -> Optional.of(NoteNaming.ENGLISH);
            case "h", "a h c", "c d e f g a h c", "deutsch" -> Optional.of(NoteNaming.GERMAN);
            case "la si do", "do re mi", "do ré mi", "solfa" -> Optional.of(NoteNaming.LATIN);
            default -> NoteNaming.of(line);
        };
    }

    /** Whether the line says in words what Enter says. */
    public static boolean passes(String line) {
        return PASSES.matcher(line.strip()).matches();
    }

    /** Passes what is asked. */
    public FirstStep pass() {
        return switch (topic) {
            case NAMES -> ask(FirstTopic.SCALE, "scale-spelling", "major");
            case SCALE, DEGREE, CHORD -> found();
        };
    }

    /** The place by what has been answered so far. */
    public FirstStep.PlaceFound found() {
        StartingPoint level = switch (topic) {
            case NAMES, SCALE -> isClose() ? StartingPoint.LETTERS : StartingPoint.BEGINNING;
            case DEGREE -> StartingPoint.CHORDS;
            case CHORD -> StartingPoint.MOVING;
        };
        return new FirstStep.PlaceFound(level);
    }

    /** Whether the last answer was nearly right, or wrong in a way that somebody is who knows what it is about. */
    private boolean isClose() {
        return last != null && (last.grade() == Grade.NEARLY || last.misconception() != null);
    }

    private FirstStep ask(FirstTopic next, String skill, String subject) {
        topic = next;
        last = null;
        return new FirstStep.PutQuestion(next, Skills.find(skill).orElseThrow().question(KEY, subject));
    }

    /** What follows an answer to the open question that could be read. */
    public FirstStep judged(Verdict verdict) {
        boolean again = last != null;
        last = verdict;
        if (!verdict.grade().isRight()) {
            return again ? pass() : new FirstStep.Again();
        }
        return switch (topic) {
            case DEGREE -> ask(FirstTopic.CHORD, "borrowed-chord", "bVI");
            case CHORD -> new FirstStep.PlaceFound(StartingPoint.COLOUR);
            default -> ask(FirstTopic.DEGREE, "degree-chord", "6");
        };
    }
}
