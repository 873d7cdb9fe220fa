package monochord.shell.sitting;

import java.util.Optional;
import monochord.course.Course;
import monochord.record.Agenda;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/** How a sitting opens: in two lines what is due and what comes next, and Enter does it. */
public final class Opening {
    static final String WELCOMED = "welcomed";

    private static final Phrase FIRST =
            Phrase.sentence("Good day. Enter begins the first lesson; or type music, a verb, or help.");

    private final Agenda agenda;
    private final long time;
    private boolean reviewed;

    Opening(Agenda agenda, long time) {
        this.agenda = agenda;
        this.time = time;
    }

    String lesson() {
        return agenda.slug();
    }

    /** The title of the lesson that follows, as the last sitting left it; perhaps empty. */
    public String nextLesson() {
        return agenda.title();
    }

    /** What to say before the first prompt; to someone new, the first question. */
    public Answer greeting(Sitting sitting) {
        if (agenda.isEmpty() && sitting.settings().get(WELCOMED).isEmpty()) {
            sitting.teaching().firstStart().begin();
            sitting.linePlace().isSaidThere();
            return FirstStart.greeting();
        }
        sitting.linePlace().isSaidThere();
        Answer day = agenda.isEmpty() ? Statement.of(FIRST) : Statement.of(due(), next(sitting));
        return RememberedSong.of(sitting)
                .map(song -> Answers.of(day, Statement.of(song.offer())))
                .orElse(day);
    }

    private Phrase due() {
        int due = agenda.due(time);
        return due == 0
                ? Phrase.sentence("Good day. Nothing is due today; practise is ten minutes with something new.")
                : Phrase.counted(
                        due,
                        "Good day. One thing is due; Enter begins today's set with it.",
                        "Good day. {0} things are due, some {1} min; Enter begins today's set.",
                        due,
                        agenda.minutes(time));
    }

    private Phrase next(Sitting sitting) {
        Phrase lesson = agenda.title().isEmpty() ? Phrase.of("the first lesson") : Phrase.typed(agenda.title());
        boolean isLeft = sitting.study().bookmarks().at(agenda.slug()).isPresent();
        if (agenda.due(time) > 0) {
            return Phrase.sentence("Then comes {0}; or type music, a verb, or help.", lesson);
        }
        return isLeft
                ? Phrase.sentence("Enter goes on with {0} where you left it; or type music, a verb, or help.", lesson)
                : Phrase.sentence("Enter begins {0}; or type music, a verb, or help.", lesson);
    }

    /** What Enter does while nothing is open. The lessons are not looked for on disk to say it. */
    Phrase row(Sitting sitting) {
        if (bringsBack(sitting)) {
            return sitting.teaching().day().isUnderWay()
                    ? Phrase.sentence("Enter goes on with today's set.")
                    : Phrase.sentence("Enter begins today's set.");
        }
        Course course = sitting.course();
        if (!course.isRead()) {
            return row(agenda.slug(), agenda.title(), sitting);
        }
        return course.next()
                .map(entry -> row(entry.slug(), Course.title(entry), sitting))
                .orElseGet(() -> Phrase.sentence("Enter finds no lesson after the last."));
    }

    private static Phrase row(String slug, String title, Sitting sitting) {
        if (title.isEmpty()) {
            return Phrase.sentence("Enter begins the first lesson.");
        }
        boolean isLeft = sitting.study().bookmarks().at(slug).isPresent();
        return isLeft
                ? Phrase.sentence("Enter goes on with {0}.", Phrase.typed(title))
                : Phrase.sentence("Enter begins {0}.", Phrase.typed(title));
    }

    private boolean bringsBack(Sitting sitting) {
        return sitting.teaching().day().isUnderWay()
                || !reviewed && agenda.due(time) > 0 && !sitting.course().wasTaken();
    }

    /** What is due has been brought back, so that Enter does not do it again. */
    void reviewed() {
        reviewed = true;
    }

    /** Once what is due, then the lesson that follows. */
    Answer begin(Sitting sitting) {
        if (bringsBack(sitting)) {
            return sitting.teaching().runs().daily(sitting.nextSeed());
        }
        return sitting.course()
                .next()
                .map(entry -> LessonStart.alone(entry, Optional.empty(), sitting))
                .orElseGet(Sitting::idle);
    }
}
