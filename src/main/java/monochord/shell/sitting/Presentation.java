package monochord.shell.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.MusicText;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.Part;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.text.SafeText;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.text.naming.AsTyped;
import monochord.theory.Key;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.ProseAnswer;
import monochord.view.Saying;
import monochord.view.Wide;
import monochord.view.course.VerdictAnswer;
import monochord.view.music.MusicAnswer;

/**
 * A lesson before a room: one thing at a time, widely set. Answers that are called out are typed and held; Enter gives
 * the verdict on each and the way to the answer. Nothing of it is kept, for it is no one learner's answer.
 */
public final class Presentation {
    private static final String IN = "in ";
    private static final String HOW =
            "Enter goes on, back goes back, in A takes another key, skip ends it. Answers are typed as they are called out.";

    private final Lesson lesson;
    private final long seed;
    private final List<AsTyped> called = new ArrayList<>();
    private Key key;
    private List<Step> steps;
    private int at = -1;
    private boolean told;

    /** @param question null for a part that asks nothing */
    private record Step(Part part, Question question) {}

    Presentation(Lesson lesson, Key key, long seed) {
        this.lesson = lesson;
        this.seed = seed;
        settle(key);
    }

    /** The same questions come again in another key, and when one goes back. */
    private void settle(Key newKey) {
        key = newKey;
        steps = new ArrayList<>();
        for (Part part : LessonWalk.sections(lesson)) {
            if (part instanceof Part.Ask ask) {
                ask.questions(key, seed + steps.size()).forEach(question -> steps.add(new Step(part, question)));
            } else if (!(part instanceof Part.Code)) {
                steps.add(new Step(part, null));
            }
        }
    }

    boolean isOver() {
        return at >= steps.size();
    }

    private boolean isAsking() {
        return at >= 0 && !isOver() && steps.get(at).question != null && !told;
    }

    /** The question that the room is looking at, if it is one. */
    public Optional<Question> question() {
        return at >= 0 && !isOver() ? Optional.ofNullable(steps.get(at).question) : Optional.empty();
    }

    /** Whether a line is meant for it: another key, or an answer that was called out. */
    public boolean takes(String line) {
        return line.toLowerCase(Locale.ROOT).startsWith(IN) || isAsking();
    }

    /** Takes such a line. */
    public Answer take(String line, Sitting sitting) {
        if (line.toLowerCase(Locale.ROOT).startsWith(IN)) {
            return inAnotherKey(AsTyped.of(line.substring(IN.length()).strip(), sitting.naming()), sitting);
        }
        called.add(NamedAnswer.answer(line, steps.get(at).question, sitting.naming()));
        return Saying.of("Noted. Another answer, or Enter for the verdict.");
    }

    /** What the room is looking at, in that key; a question too, whatever keys its block goes through. */
    private Answer inAnotherKey(AsTyped named, Sitting sitting) {
        Key chosen = Course.majorKey(Key.parse(named.english()));
        Optional<Question> open = question();
        settle(chosen);
        sitting.settle(chosen);
        at = Math.min(at, steps.size() - 1);
        open.flatMap(question -> moved(question, chosen))
                .ifPresent(question -> steps.set(at, new Step(steps.get(at).part, question)));
        return shown(sitting);
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

    /** The verdict on what was called out, or the next thing. */
    Answer goOn(Sitting sitting) {
        if (isAsking()) {
            told = true;
            return told(steps.get(at).question);
        }
        at++;
        if (isOver()) {
            return Saying.of("End of " + lesson.title() + ".");
        }
        return at > 0 ? shown(sitting) : Answers.of(shown(sitting), Saying.of(StyledText.of(HOW, Style.QUIET)));
    }

    private Answer told(Question question) {
        List<Answer> all = new ArrayList<>();
        for (AsTyped answer : called) {
            all.add(Saying.of(StyledText.of(SafeText.clean(answer.typed()) + ":", Style.STRONG)));
            all.add(new VerdictAnswer(question, NamedAnswer.judge(answer, question), ""));
        }
        all.add(Saying.of(question.derivation()));
        return new Wide(new Answers(all));
    }

    /** The thing before. */
    public Answer back(Sitting sitting) {
        at = Math.max(0, at - 1);
        return shown(sitting);
    }

    private Answer shown(Sitting sitting) {
        called.clear();
        told = false;
        Step step = steps.get(Math.max(0, at));
        return step.question != null
                ? new Wide(Hearing.put(step.question, sitting.stage().ear()))
                : shown(step.part, sitting);
    }

    private Answer shown(Part part, Sitting sitting) {
        if (part instanceof Part.Prose prose) {
            return new Wide(new ProseAnswer(prose.blocks(), new Filling(key)::of));
        }
        if (part instanceof Part.Show show) {
            return MusicAnswer.of(MusicText.read(show.sentence(), key), key);
        }
        List<String> music =
                part instanceof Part.Compare compare ? compare.music() : List.of(((Part.Listen) part).music());
        return LessonWalk.played(music, key, sitting);
    }
}
