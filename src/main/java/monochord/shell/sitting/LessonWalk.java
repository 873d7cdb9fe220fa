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
import monochord.score.Arrangement;
import monochord.score.Score;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Answers;
import monochord.shell.answer.AskAnswer;
import monochord.shell.answer.MusicAnswer;
import monochord.shell.answer.PlayAnswer;
import monochord.shell.answer.ProseAnswer;
import monochord.shell.answer.Saying;
import monochord.sound.Performance;
import monochord.theory.Beats;
import monochord.theory.Key;

/**
 * A walk through a lesson, from one place where the learner has something to do to the next: a question, something to
 * listen to, or a new heading once there is enough on the screen.
 */
final class LessonWalk {
    /** Lines kept for what often follows a section: a picture, a question, the prompt. */
    private static final int PICTURE = 6;

    private static final Beats BREATH = Beats.of(2);

    private final Lesson lesson;
    private final Key key;
    private final Filling filling;
    private final Deque<Part> ahead = new ArrayDeque<>();
    private final Deque<Question> questions = new ArrayDeque<>();
    private int asked;
    private int atOnce;

    LessonWalk(Lesson lesson, Key key) {
        this.lesson = lesson;
        this.key = key;
        this.filling = new Filling(key);
        lesson.parts().forEach(part -> ahead.addAll(byHeading(part)));
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

    boolean isOver() {
        return ahead.isEmpty() && questions.isEmpty();
    }

    /** Everything up to the next place to stop. */
    Answer goOn(Sitting sitting) {
        List<Answer> page = new ArrayList<>();
        boolean stopped = nextQuestion(page, sitting);
        while (!stopped && !ahead.isEmpty()) {
            stopped = isFull(page, sitting) ? rest(page) : take(ahead.poll(), page, sitting);
        }
        return new Answers(page);
    }

    /** Whether the next section would push the beginning of the page off the screen. */
    private boolean isFull(List<Answer> page, Sitting sitting) {
        if (page.isEmpty() || !(ahead.peek() instanceof Part.Prose next)) {
            return false;
        }
        int needed = lines(new ProseAnswer(next.blocks(), filling::of), sitting) + PICTURE;
        return lines(new Answers(page), sitting) + needed > sitting.screenLines();
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
        }
        return false;
    }

    private boolean listen(List<String> lines, List<Answer> page, Sitting sitting) {
        List<Music> music =
                lines.stream().map(line -> MusicText.read(line, key)).toList();
        Performance performance = Performance.of(inTurn(music)).in(key);
        page.add(new PlayAnswer(music, performance.tempo(), sitting.ear().play(performance)));
        sitting.remember(performance, music);
        page.add(Saying.of(ahead.isEmpty() ? "play hears it again." : "Enter goes on; play hears it again."));
        return true;
    }

    private static Score inTurn(List<Music> music) {
        Score score = Arrangement.of(music.get(0));
        for (Music next : music.subList(1, music.size())) {
            score = score.then(Score.rest(BREATH)).then(Arrangement.of(next));
        }
        return score;
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
