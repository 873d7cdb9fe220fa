package monochord.shell.storage;

import java.util.List;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import monochord.course.Course;
import monochord.practice.Skill;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Due;
import monochord.practice.mastery.Knowledge;
import monochord.practice.skill.Skills;
import monochord.record.Agenda;
import monochord.record.Bookmarks;
import monochord.record.KeptSet;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/** The learner's answers over the days: what is kept of this sitting, what is known, what is to come back. */
public final class LearnerRecord {
    private final Keeper keeper;
    private final LongSupplier clock;
    private Bookmarks bookmarks;
    private boolean keeping;
    private boolean changed;
    private boolean left;

    /** @param clock milliseconds since 1970 in UTC */
    public LearnerRecord(Keeper keeper, LongSupplier clock) {
        this.keeper = keeper;
        this.clock = clock;
    }

    public long now() {
        return clock.getAsLong();
    }

    /** From now on answers are kept: somebody sits here, it is not one sentence of a script. */
    public void begin() {
        keeping = true;
    }

    public void ready() {
        if (keeping) {
            keeper.ready();
        }
    }

    public void keep(Attempt attempt) {
        if (keeping) {
            changed = true;
            keeper.keep(attempt);
        }
    }

    public Knowledge knowledge() {
        return keeper.knowledge();
    }

    /** What keeps it all. */
    public Keeper keeper() {
        return keeper;
    }

    /** What is due now. */
    public Due due() {
        return Due.at(now(), knowledge());
    }

    public KeptSet keptSet() {
        return keeper.set();
    }

    public void keep(KeptSet set) {
        if (keeping) {
            keeper.keep(set);
        }
    }

    public Agenda agenda() {
        return keeper.agenda();
    }

    /** The answer, and behind it what must be said about the record, if anything. */
    public Answer withNotices(Answer answer) {
        List<Phrase> notices = keeper.notices();
        return notices.isEmpty() ? answer : Answers.of(answer, new Statement(notices, Answer.DONE));
    }

    /** Which lessons are finished, and where others were left. */
    public Bookmarks bookmarks() {
        if (bookmarks == null) {
            bookmarks = keeper.bookmarks();
        }
        return bookmarks;
    }

    /** A lesson stands there now. */
    public void keepPlace(String slug, Bookmarks.LessonPlace mark) {
        keep(bookmarks().leftAt(slug, mark));
    }

    public void finishLesson(String slug) {
        keep(bookmarks().finished(slug));
    }

    private void keep(Bookmarks now) {
        bookmarks = now;
        if (keeping) {
            keeper.keep(now);
        }
    }

    /** Leaves word for the next sitting, once, if this one changed anything. */
    public synchronized void leave(Course course, Predicate<Skill> unwanted) {
        if (keeping && !left && (changed || course.wasTaken())) {
            left = true;
            Knowledge asked = knowledge()
                    .without(item -> Skills.find(item.skill()).filter(unwanted).isPresent());
            keeper.leave(course.agenda(keeper.agenda(), asked));
        }
    }
}
