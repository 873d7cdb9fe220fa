package monochord.shell.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.course.Course;
import monochord.course.LessonWalk;
import monochord.course.Measure;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Question;
import monochord.record.Bookmarks;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Look;
import monochord.view.ProseAnswer;
import monochord.view.Statement;
import monochord.view.course.LessonEnd;
import monochord.view.course.LessonHead;
import monochord.view.course.TuneAnswer;
import monochord.view.music.MusicAnswer;

/** Shows a lesson page by page, plays what is on a page, and keeps the learner's place in it. */
final class LessonTeaching {
    /** Lines of what is played and how to go on, or of a question and its number. */
    private static final int STOP = 3;

    private final LessonWalk walk;
    private final LessonCode code;
    private final Filling filling;
    private final Optional<HomeworkTeaching> homework;

    private LessonTeaching(LessonWalk walk, Optional<HomeworkTeaching> homework) {
        this.walk = walk;
        this.homework = homework;
        this.code = new LessonCode(walk.entry().file());
        this.filling = new Filling(walk.key());
    }

    /** Begins a lesson anew, or goes on where it was left in any key or in this one. */
    static LessonTeaching of(LibraryEntry entry, Lesson lesson, Optional<Key> wanted, Sitting sitting) {
        Optional<Bookmarks.LessonPlace> mark = sitting.study()
                .bookmarks()
                .at(entry.slug())
                .filter(left ->
                        wanted.isEmpty() || left.key().equals(wanted.get().toString()));
        Key key = mark.map(left -> Key.parse(left.key()))
                .orElseGet(() -> Course.majorKey(wanted.orElseGet(sitting::key)));
        Measure measure = measure(key, sitting);
        return new LessonTeaching(
                mark.map(left -> LessonWalk.from(entry, lesson, left, key, measure))
                        .orElseGet(() -> LessonWalk.from(entry, lesson, key, measure)),
                Optional.empty());
    }

    /** Begins an assignment, which keeps its place itself. */
    static LessonTeaching of(LibraryEntry entry, Lesson lesson, HomeworkTeaching homework, Sitting sitting) {
        Key key = Course.majorKey(sitting.key());
        LessonWalk walk = LessonWalk.from(entry, lesson, key, measure(key, sitting));
        return new LessonTeaching(walk, Optional.of(homework));
    }

    /** The assignment, if it is one. */
    Optional<HomeworkTeaching> homework() {
        return homework;
    }

    LessonWalk walk() {
        return walk;
    }

    boolean isJavaWaiting() {
        return code.isWaiting();
    }

    /** Its title and its first page, or the one where it was left. */
    Answer begin(Sitting sitting) {
        return Answers.of(new LessonHead(walk.lesson(), walk.key()), next(sitting));
    }

    /** The question that waits, the next one or the next page; runs Java that waited for it. */
    Answer next(Sitting sitting) {
        List<Answer> page = new ArrayList<>();
        code.run(page, sitting);
        walk.fit(measure(walk.key(), sitting));
        return shown(walk.next(sitting::nextSeed), page, sitting);
    }

    /** The same after an answer: a page that would push what is said to it out of the window waits for Enter. */
    Answer nextBelowVerdict(Sitting sitting) {
        walk.fit(measure(walk.key(), sitting));
        if (walk.restsBeforeNextPage()) {
            keepPlace(sitting);
            return new Answers(List.of());
        }
        return next(sitting);
    }

    Answer back(Sitting sitting) {
        code.passBy();
        sitting.question().clear();
        return shown(walk.back(sitting::nextSeed), new ArrayList<>(), sitting);
    }

    Answer passCodeBy(Sitting sitting) {
        code.passBy();
        return next(sitting);
    }

    private Answer shown(LessonWalk.Step step, List<Answer> page, Sitting sitting) {
        step.parts().forEach(part -> show(part, page, sitting));
        // Before the question: one that is left out leads on at once, perhaps to the end of the lesson.
        keepPlace(sitting);
        step.question().ifPresent(question -> page.add(put(question, sitting)));
        if (step.isOver() && !code.isWaiting() && !sitting.outside().asksConsent()) {
            page.add(end(sitting));
        }
        return new Answers(page);
    }

    private void keepPlace(Sitting sitting) {
        if (homework.isPresent()) {
            return;
        }
        sitting.study().keepPlace(walk.entry().slug(), walk.mark());
    }

    private Answer put(Question question, Sitting sitting) {
        sitting.question().put(question, walk.lesson().slug());
        sitting.study().ready();
        return sitting.teaching().silence().put();
    }

    private void show(LessonPart part, List<Answer> page, Sitting sitting) {
        if (part instanceof LessonPart.ProsePart prose) {
            page.add(new ProseAnswer(prose.blocks(), filling::of));
        } else if (part instanceof LessonPart.Show show) {
            page.add(MusicAnswer.of(MusicText.read(show.sentence(), walk.key()), walk.key()));
        } else if (part instanceof LessonPart.Code java) {
            code.show(java, page, sitting);
        } else {
            page.add(played(part, walk.key(), sitting));
        }
    }

    /** Plays what a part lets hear; several things one after the other and equally loud, to be compared. */
    static Answer played(LessonPart part, Key key, Sitting sitting) {
        if (part instanceof LessonPart.TunePart tune) {
            return PlaybackInTurn.play(tune.tune().in(key), sitting);
        }
        List<String> lines = part instanceof LessonPart.Compare compare
                ? compare.music()
                : List.of(((LessonPart.Listen) part).music());
        List<Music> music =
                lines.stream().map(line -> MusicText.read(line, key)).toList();
        return PlaybackInTurn.play(music, key, sitting);
    }

    private Answer end(Sitting sitting) {
        if (homework.isPresent()) {
            sitting.teaching().lessonIsOver(this);
            return homework.get().end(sitting);
        }
        sitting.study().finishLesson(walk.entry().slug());
        sitting.course().finish();
        sitting.teaching().lessonIsOver(this);
        sitting.linePlace().isSaidThere();
        String next = sitting.course().next().map(Course::title).orElse("");
        return new LessonEnd(walk.lesson(), walk.asked(), walk.rightAtOnce(), next);
    }

    /** Leaves it where it stands. */
    Answer leave(Sitting sitting) {
        if (homework.isPresent()) {
            return homework.get().leave();
        }
        keepPlace(sitting);
        return Statement.of(Phrase.sentence(
                "{0} keeps your place, page {1} of {2}; learn {3} goes on there.",
                Phrase.typed(Course.title(walk.entry())),
                walk.page().at(),
                walk.page().of(),
                Phrase.typed(walk.entry().number())));
    }

    private static Measure measure(Key key, Sitting sitting) {
        return new Window(key, sitting.look(), sitting.screenLines());
    }

    /** What a part of a lesson in this key takes of the window. */
    private record Window(Key key, Look look, int rows) implements Measure {
        @Override
        public int lines(LessonPart part) {
            if (part instanceof LessonPart.ProsePart prose) {
                return lines(new ProseAnswer(prose.blocks(), new Filling(key)::of));
            }
            if (part instanceof LessonPart.Show show) {
                return lines(MusicAnswer.of(MusicText.read(show.sentence(), key), key));
            }
            if (part instanceof LessonPart.TunePart tune) {
                return lines(new TuneAnswer(tune.tune().in(key))) + STOP;
            }
            return part instanceof LessonPart.Compare compare
                    ? STOP - 1 + compare.music().size()
                    : STOP;
        }

        private int lines(Answer answer) {
            return answer.text(look).lines().size();
        }
    }
}
