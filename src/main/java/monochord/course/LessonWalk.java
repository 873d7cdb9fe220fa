package monochord.course;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Question;
import monochord.record.Bookmarks;
import monochord.theory.Key;

/**
 * A lesson that is being taken page by page. On each page stands as much as the window holds; a page may end with questions,
 * and those come one by one. It can be left anywhere and taken up there again, in another window, too.
 */
public final class LessonWalk implements Activity {
    private final LibraryEntry entry;
    private final Lesson lesson;
    private final Key key;
    private Measure measure;
    private List<LessonPage> pages;
    private int at = -1;
    private int farthest = -1;
    private List<Question> questions = List.of();
    private int question;
    private boolean isSettled = true;
    private int passedBefore;
    private int questionsBefore;
    private int asked;
    private int atOnce;

    /**
     * What comes next.
     *
     * @param parts to be shown, none where only the next question is put
     * @param question to be put below them
     * @param isOver whether nothing comes behind it
     */
    public record Step(List<LessonPart> parts, Optional<Question> question, boolean isOver) {}

    private LessonWalk(LibraryEntry entry, Lesson lesson, Key key, Measure measure) {
        this.entry = entry;
        this.lesson = lesson;
        this.key = key;
        this.measure = measure;
        this.pages = LessonPages.of(lesson, measure);
    }

    /** From its first page. */
    public static LessonWalk from(LibraryEntry entry, Lesson lesson, Key key, Measure measure) {
        return new LessonWalk(entry, lesson, key, measure);
    }

    /** From the page where it was left; one that has been rewritten since is taken up as near to it as may be. */
    public static LessonWalk from(
            LibraryEntry entry, Lesson lesson, Bookmarks.LessonPlace mark, Key key, Measure measure) {
        LessonWalk walk = new LessonWalk(entry, lesson, key, measure);
        walk.at = walk.pageOf(mark.section(), mark.block()) - 1;
        walk.farthest = walk.at;
        walk.passedBefore = mark.question();
        walk.asked = mark.asked();
        walk.atOnce = mark.right();
        return walk;
    }

    private int pageOf(int section, int block) {
        int page = 0;
        while (page + 1 < pages.size() && !pages.get(page + 1).isBehind(section, block)) {
            page++;
        }
        return page;
    }

    public LibraryEntry entry() {
        return entry;
    }

    public Lesson lesson() {
        return lesson;
    }

    public Key key() {
        return key;
    }

    @Override
    public int nearness() {
        return 0;
    }

    /** Whether a question waits for an answer. */
    public boolean isAsking() {
        return !isSettled;
    }

    /** Of the question that is open, else of the page. */
    public Position place() {
        return isSettled
                ? new Position(Position.Unit.PAGE, Math.max(at, 0) + 1, pages.size())
                : new Position(Position.Unit.QUESTION, questionsBefore + question + 1, allQuestions());
    }

    /** Of the page, whatever is asked on it. */
    public Position page() {
        return new Position(Position.Unit.PAGE, Math.max(at, 0) + 1, pages.size());
    }

    /** How many questions of the whole lesson there are; the drawn ones stand for those that can be counted. */
    private int allQuestions() {
        int ahead = 0;
        for (LessonPage page : pages.subList(at + 1, pages.size())) {
            ahead += page.last() instanceof LessonPart.Asks ask ? count(ask) : 0;
        }
        return questionsBefore + questions.size() + ahead;
    }

    private int count(LessonPart.Asks ask) {
        return ask.questions(key, 0).size();
    }

    /** Whether the page ends with something to listen to. */
    public boolean endsWithMusic() {
        return at >= 0
                && (pages.get(at).last() instanceof LessonPart.Listen
                        || pages.get(at).last() instanceof LessonPart.Compare
                        || pages.get(at).last() instanceof LessonPart.TunePart);
    }

    /** Where it stands, to be taken up there another day. */
    public Bookmarks.LessonPlace mark() {
        LessonPage page = pages.get(Math.max(at, 0));
        int passed = Math.min(questions.size(), isSettled ? question + 1 : question);
        return new Bookmarks.LessonPlace(page.section(), page.block(), passed, asked, atOnce, key.toString());
    }

    public int asked() {
        return asked;
    }

    public int rightAtOnce() {
        return atOnce;
    }

    /** Counts an answer to the open question, and is done with it; on a page that was gone back to nothing counts. */
    public void note(boolean rightAtOnce) {
        isSettled = true;
        if (at == farthest) {
            asked++;
            atOnce += rightAtOnce ? 1 : 0;
        }
    }

    /** Leaves the open question without counting it. */
    public void pass() {
        isSettled = true;
    }

    /** Leaves all questions of this page. */
    public void passAll() {
        isSettled = true;
        question = Math.max(0, questions.size() - 1);
    }

    /** Another window, if it is one: the pages are parted anew, and it stays where it is. */
    public void fit(Measure other) {
        if (other.equals(measure)) {
            return;
        }
        measure = other;
        LessonPage here = pages.get(Math.max(at, 0));
        pages = LessonPages.of(lesson, measure);
        int now = pageOf(here.section(), here.block());
        farthest = at == farthest ? now : Math.max(now, farthest);
        at = at < 0 ? at : now;
    }

    /** Whether the next page had better not follow at once upon what is said to an answer. */
    public boolean restsBeforeNextPage() {
        return isSettled
                && question + 1 >= questions.size()
                && at + 1 < pages.size()
                && pages.get(at + 1).standsAlone();
    }

    /** The question that waits; else the next one of this page; else the next page. */
    public Step next(LongSupplier seeds) {
        if (!isSettled) {
            return new Step(List.of(), Optional.of(questions.get(question)), false);
        }
        if (question + 1 < questions.size()) {
            question++;
            isSettled = false;
            return new Step(List.of(), Optional.of(questions.get(question)), false);
        }
        if (at + 1 == pages.size()) {
            return new Step(List.of(), Optional.empty(), true);
        }
        at++;
        return turnTo(seeds);
    }

    /** The page again, if a question stands on it, else the page before; what it asks is asked anew. */
    public Step back(LongSupplier seeds) {
        if (isSettled && at > 0) {
            at--;
            questions = List.of();
        } else if (!isSettled) {
            return new Step(lastShown(), Optional.of(questions.get(question)), false);
        }
        return turnTo(seeds);
    }

    /** What was to be read last, on this page or before it. */
    private List<LessonPart> lastShown() {
        int page = at;
        while (page > 0 && pages.get(page).shown().isEmpty()) {
            page--;
        }
        return pages.get(page).shown();
    }

    private Step turnTo(LongSupplier seeds) {
        questionsBefore = 0;
        for (LessonPage before : pages.subList(0, at)) {
            questionsBefore += before.last() instanceof LessonPart.Asks ask ? count(ask) : 0;
        }
        farthest = Math.max(farthest, at);
        LessonPage page = pages.get(at);
        questions = page.last() instanceof LessonPart.Asks ask ? ask.questions(key, seeds.getAsLong()) : List.of();
        question = Math.min(passedBefore, questions.size());
        passedBefore = 0;
        isSettled = question == questions.size();
        Optional<Question> open = isSettled ? Optional.empty() : Optional.of(questions.get(question));
        return new Step(page.shown(), open, open.isEmpty() && at + 1 == pages.size());
    }
}
