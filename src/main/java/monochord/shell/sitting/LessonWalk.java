package monochord.shell.sitting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.lesson.Block;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.Part;
import monochord.practice.Question;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.ProseAnswer;
import monochord.view.Saying;
import monochord.view.music.MusicAnswer;

/**
 * A walk through a lesson, from one place where the learner has something to do to the next: a question, something to
 * listen to, or a new heading once there is enough on the screen.
 */
final class LessonWalk {
    private static final int TITLE = 2;
    /** What is said to an answer, with the empty line under it. */
    private static final int VERDICT = 4;
    /** A question, or what is played and how to go on. */
    private static final int QUESTION = 3;
    /** The line that says how to go on, and the prompt, each after an empty line. */
    private static final int PROMPT = 4;

    private final Lesson lesson;
    private final Key key;
    private final Filling filling;
    private final Deque<Part> ahead = new ArrayDeque<>();
    private final Deque<Question> questions = new ArrayDeque<>();
    private int above = TITLE;
    private final LessonCode code;
    private int asked;
    private int atOnce;

    /** @param code what becomes of the Java in it */
    LessonWalk(Lesson lesson, Key key, LessonCode code) {
        this.code = code;
        this.lesson = lesson;
        this.key = key;
        this.filling = new Filling(key);
        this.ahead.addAll(sections(lesson));
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
        above = VERDICT;
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
        above = 0;
        return new Answers(page);
    }

    /** Whether the next section, with what is drawn in it, would push the beginning of the page off the screen. */
    private boolean isFull(List<Answer> page, Sitting sitting) {
        int room = sitting.screenLines() - PROMPT - above;
        if (ahead.peek() instanceof Part.Show) {
            return !page.isEmpty() && lines(new Answers(page), sitting) + picture(sitting) > room;
        }
        if (!(ahead.peek() instanceof Part.Prose)) {
            return false;
        }
        boolean isBare = page.isEmpty() && above < VERDICT;
        if (!isBare) {
            return lines(new Answers(page), sitting) + section(sitting) > room;
        }
        while (section(sitting) > room && part(room, sitting)) {}
        return false;
    }

    /**
     * Parts a section that fills more than a screen, between two paragraphs: as much of it as has room stays with what is
     * drawn or asked below.
     *
     * @return whether there was a place to part it
     */
    private boolean part(int room, Sitting sitting) {
        Part.Prose whole = (Part.Prose) ahead.poll();
        List<Block> blocks = whole.blocks();
        int first = blocks.get(0) instanceof Block.Heading ? 2 : 1;
        List<Integer> cuts = IntStream.range(first, blocks.size())
                .filter(cut -> !(blocks.get(cut) instanceof Block.Item))
                .boxed()
                .toList();
        int cut = cuts.stream()
                .filter(place -> fits(whole.from(place), room, sitting))
                .findFirst()
                .orElse(cuts.isEmpty() ? blocks.size() : cuts.get(cuts.size() - 1));
        if (cut < blocks.size()) {
            ahead.addFirst(whole.from(cut));
        }
        ahead.addFirst(whole.upTo(cut));
        return cut < blocks.size();
    }

    private boolean fits(Part.Prose prose, int room, Sitting sitting) {
        ahead.addFirst(prose);
        boolean fits = section(sitting) <= room;
        ahead.removeFirst();
        return fits;
    }

    /** Lines of the next picture, and of what is played or asked right under it. */
    private int picture(Sitting sitting) {
        Part under = ahead.stream().skip(1).findFirst().orElse(null);
        boolean stops = under != null && !(under instanceof Part.Prose || under instanceof Part.Show);
        return 1 + lines(ahead.peek(), sitting) + (stops ? 1 + lines(under, sitting) : 0);
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
                : part instanceof Part.Compare compare
                        ? QUESTION - 1 + compare.music().size()
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
            return code.show(java, page, sitting);
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

    /** Plays these, one after the other; several of them equally loud, to be compared. */
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
        sitting.teaching().put(next, lesson.slug());
        page.add(sitting.teaching().asked());
        return true;
    }
}
