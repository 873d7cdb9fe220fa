package monochord.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/**
 * A lesson taken with a class, one thing at a time. Answers that are called out are held until the class is to hear the
 * verdict on each and the way to the answer. Nothing of it is kept, for it is no one learner's answer.
 */
public final class RoomLesson implements Activity {
    private final Lesson lesson;
    private final long seed;
    private final List<Called> called = new ArrayList<>();
    private List<ClassStep> steps = List.of();
    private Key key;
    private int at;
    private boolean isTold;
    private int hints;

    /**
     * An answer that was called out.
     *
     * @param name of who called it; empty if it was not said
     */
    public record Called(String name, JudgedAnswer answer) {}

    /** What the class looks at. */
    public sealed interface ClassStep {
        /** Something to read or to hear. */
        record Shown(LessonPart part) implements ClassStep {}

        record Asked(Question question) implements ClassStep {}
    }

    /** @param seed the same questions come again in another key, and when one goes back */
    public RoomLesson(Lesson lesson, Key key, long seed) {
        this.lesson = lesson;
        this.seed = seed;
        settle(key);
    }

    private void settle(Key newKey) {
        key = newKey;
        List<ClassStep> all = new ArrayList<>();
        for (LessonPart part : LessonPages.sections(lesson)) {
            if (part instanceof LessonPart.Ask ask) {
                ask.questions(key, seed + all.size()).forEach(question -> all.add(new ClassStep.Asked(question)));
            } else if (!(part instanceof LessonPart.Code)) {
                all.add(new ClassStep.Shown(part));
            }
        }
        steps = all;
    }

    public Lesson lesson() {
        return lesson;
    }

    /** In which its examples are filled in. */
    public Key key() {
        return key;
    }

    @Override
    public int nearness() {
        return 1;
    }

    public Position place() {
        return new Position(Position.Unit.STEP, Math.min(at + 1, steps.size()), steps.size());
    }

    public boolean isOver() {
        return at >= steps.size();
    }

    /** Whether a question stands there and the class has not been told the answer. */
    public boolean isAsking() {
        return question().isPresent() && !isTold;
    }

    /** The question that the class looks at, if it is one. */
    public Optional<Question> question() {
        return !isOver() && steps.get(at) instanceof ClassStep.Asked asked
                ? Optional.of(asked.question)
                : Optional.empty();
    }

    /** What the class looks at, shown anew. */
    public ClassStep look() {
        called.clear();
        isTold = false;
        hints = 0;
        return steps.get(at);
    }

    /** Holds an answer that was called out. */
    public void hold(Called answer) {
        called.add(answer);
    }

    /** The verdict on each answer that was called out; from now on the class knows. */
    public List<Called> tell() {
        isTold = true;
        return List.copyOf(called);
    }

    /** The next hint for the open question, the last one again when there are no more. */
    public Phrase hint() {
        List<Phrase> all = question().orElseThrow().hints();
        Phrase hint = all.get(Math.min(hints++, all.size() - 1));
        return hints < all.size() ? hint : hint.then(OpenQuestion.LAST_HINT);
    }

    /** The next thing, none where it ends. */
    public void forward() {
        at++;
    }

    /** The thing before, or the first again. */
    public void back() {
        at = Math.max(0, at - 1);
    }

    /** What the class looks at, in that key; a question too, whatever keys its block goes through. */
    public void inKey(Key chosen) {
        Optional<Question> open = question();
        settle(chosen);
        at = Math.min(at, steps.size() - 1);
        open.flatMap(question -> moved(question, chosen))
                .ifPresent(question -> steps.set(at, new ClassStep.Asked(question)));
    }

    /** The same asked in that key; none where what it asks about does not stand there. */
    private static Optional<Question> moved(Question question, Key key) {
        try {
            Skill skill = Skills.find(question.skillId()).orElseThrow();
            Question there = skill.question(key, question.subject(), question.seed());
            return Optional.of(there).filter(moved -> moved.key().equals(key));
        } catch (Unreadable notThere) {
            return Optional.empty();
        }
    }
}
