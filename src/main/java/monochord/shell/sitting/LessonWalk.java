package monochord.shell.sitting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.lesson.Block;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.Part;
import monochord.practice.Question;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Answers;
import monochord.shell.answer.AskAnswer;
import monochord.shell.answer.MusicAnswer;
import monochord.shell.answer.ProseAnswer;
import monochord.shell.answer.Saying;
import monochord.theory.Key;

/**
 * A walk through a lesson, from one place where the learner has something to do to the next: a question, something to
 * listen to, or a new heading once there is enough on the screen.
 */
final class LessonWalk {
    private static final int TITLE = 2;
    /** A question, or what is played and how to go on. */
    private static final int QUESTION = 3;
    /** The line that says how to go on, and the prompt, each after an empty line. */
    private static final int PROMPT = 4;

    private final Lesson lesson;
    private final Key key;
    private final Filling filling;
    private final Deque<Part> ahead = new ArrayDeque<>();
    private final Deque<Question> questions = new ArrayDeque<>();
    private final int length;
    private final LessonCode code;
    private int asked;
    private int atOnce;

    /** @param runsCode whether Java in it may be run */
    LessonWalk(Lesson lesson, Key key, boolean runsCode) {
        this.code = new LessonCode(runsCode);
        this.lesson = lesson;
        this.key = key;
        this.filling = new Filling(key);
        this.ahead.addAll(sections(lesson));
        this.length = ahead.size();
    }

    /** The parts of a lesson, prose cut before each heading. */
    static List<Part> sections(Lesson lesson) {
        return lesson.parts().stream().flatMap(part -> byHeading(part).stream()).toList();
    }

    /** Prose is cut before each heading, so that the walk can rest there. */
    private static List<Part> byHeading(Part part) {
        if (!(part instanceof Part.Prose prose)) {
            return List.of(part);
        }
        List<Part> sections = new ArrayList<>();
        List<Block> section = new ArrayList<>();
        for (Block block : prose.blocks()) {
            if (block instanceof Block.Heading && !section.isEmpty()) {
                sections.add(new Part.Prose(prose.line(), section));
                section = new ArrayList<>();
            }
            section.add(block);
        }
        sections.add(new Part.Prose(prose.line(), section));
        return sections;
    }

    Lesson lesson() {
        return lesson;
    }

    int asked() {
        return asked;
    }

    int rightAtOnce() {
        return atOnce;
    }

    void note(boolean rightAtOnce) {
        asked++;
        atOnce += rightAtOnce ? 1 : 0;
    }

    /** Puts a question back that has not been answered yet. */
    void keep(Question question) {
        questions.addFirst(question);
    }

    boolean isOver() {
        return ahead.isEmpty() && questions.isEmpty() && !code.isWaiting();
    }

    /** Everything up to the next place to stop. */
    Answer goOn(Sitting sitting) {
        List<Answer> page = new ArrayList<>();
        code.run(page, sitting);
        boolean stopped = nextQuestion(page, sitting);
        while (!stopped && !ahead.isEmpty()) {
            stopped = isFull(page, sitting) ? rest(page) : take(ahead.poll(), page, sitting);
        }
        return new Answers(page);
    }

    /** Whether the next section, with what is drawn in it, would push the beginning of the page off the screen. */
    private boolean isFull(List<Answer> page, Sitting sitting) {
        if (page.isEmpty() || !(ahead.peek() instanceof Part.Prose)) {
            return false;
        }
        int title = isFirstPage(page) ? TITLE : 0;
        return title + lines(new Answers(page), sitting) + section(sitting) + PROMPT > sitting.screenLines();
    }

    private boolean isFirstPage(List<Answer> page) {
        return asked == 0 && ahead.size() + page.size() == length;
    }

    /** Lines from the next part up to the next prose or place to stop. */
    private int section(Sitting sitting) {
        int lines = 0;
        int parts = 0;
        for (Part part : ahead) {
            if (parts++ > 0 && part instanceof Part.Prose) {
                return lines;
            }
            lines += 1 + lines(part, sitting);
            if (!(part instanceof Part.Prose || part instanceof Part.Show)) {
                return lines;
            }
        }
        return lines;
    }

    private int lines(Part part, Sitting sitting) {
        if (part instanceof Part.Prose prose) {
            return lines(new ProseAnswer(prose.blocks(), filling::of), sitting);
        }
        return part instanceof Part.Show show
                ? lines(MusicAnswer.of(MusicText.read(show.sentence(), key), key), sitting)
                : QUESTION;
    }

    private static int lines(Answer answer, Sitting sitting) {
        return answer.text(sitting.look()).lines().size();
    }

    private static boolean rest(List<Answer> page) {
        page.add(Saying.of("Enter goes on."));
        return true;
    }

    private boolean take(Part part, List<Answer> page, Sitting sitting) {
        if (part instanceof Part.Prose prose) {
            page.add(new ProseAnswer(prose.blocks(), filling::of));
        } else if (part instanceof Part.Show show) {
            page.add(MusicAnswer.of(MusicText.read(show.sentence(), key), key));
        } else if (part instanceof Part.Listen listen) {
            return listen(List.of(listen.music()), page, sitting);
        } else if (part instanceof Part.Compare compare) {
            return listen(compare.music(), page, sitting);
        } else if (part instanceof Part.Ask ask) {
            questions.addAll(ask.questions(key, sitting.nextSeed()));
            return nextQuestion(page, sitting);
        } else if (part instanceof Part.Code java) {
            return code.show(java, page);
        }
        return false;
    }

    /** Goes on without running the code that was shown. */
    void passCodeBy() {
        code.passBy();
    }

    private boolean listen(List<String> lines, List<Answer> page, Sitting sitting) {
        page.add(played(lines, key, sitting));
        page.add(Saying.of(ahead.isEmpty() ? "play hears it again." : "Enter goes on; play hears it again."));
        return true;
    }

    /** Plays these, one after the other. */
    static Answer played(List<String> lines, Key key, Sitting sitting) {
        List<Music> music =
                lines.stream().map(line -> MusicText.read(line, key)).toList();
        return InTurn.play(music, key, sitting);
    }

    private boolean nextQuestion(List<Answer> page, Sitting sitting) {
        Question next = questions.poll();
        if (next == null) {
            return false;
        }
        sitting.put(next, lesson.slug());
        page.add(new AskAnswer(next));
        return true;
    }
}
