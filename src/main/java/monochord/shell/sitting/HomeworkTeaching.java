package monochord.shell.sitting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import monochord.classroom.Assignment;
import monochord.classroom.AssignmentReader;
import monochord.classroom.AssignmentWriter;
import monochord.classroom.HandIn;
import monochord.classroom.HandInDraft;
import monochord.classroom.PupilCode;
import monochord.course.JudgedAnswer;
import monochord.course.OpenQuestion;
import monochord.file.WholeFile;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.ProseBlock;
import monochord.lesson.TextRun;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/**
 * An assignment that is being done at the line. What is handed in is written after each answer, so that nothing is lost
 * and it can be gone on with another day.
 */
public final class HomeworkTeaching {
    /** A lesson has a grade; of an assignment nobody asks for it. */
    private static final int GRADE = 1;

    private final HandInDraft draft;
    private final Path file;
    private final String name;
    private final boolean fromPaper;
    private final Function<Path, Answer> ending;
    private Optional<Phrase> trouble = Optional.empty();

    /**
     * What is to be done by whom, and where it is handed in.
     *
     * @param name of the file as it was typed
     */
    public record HomeworkTask(Assignment given, PupilCode code, Path file, String name) {}

    private HomeworkTeaching(
            HandInDraft draft, HomeworkTask task, boolean fromPaper, Function<Path, Answer> ending) {
        this.draft = draft;
        this.file = task.file();
        this.name = task.name();
        this.fromPaper = fromPaper;
        this.ending = ending;
    }

    /** Begins an assignment, or goes on with it: page by page, for the pupil of that code. */
    public static Answer begin(HomeworkTask task, Sitting sitting) {
        return begin(task, false, written -> new Answers(List.of()), sitting);
    }

    /**
     * Takes down what a pupil wrote on paper: nothing is judged on the way, and nothing counts for who types.
     *
     * @param ending what is said in the end of the file that was written
     */
    public static Answer fromPaper(HomeworkTask task, Function<Path, Answer> ending, Sitting sitting) {
        return begin(task, true, ending, sitting);
    }

    private static Answer begin(
            HomeworkTask task, boolean fromPaper, Function<Path, Answer> ending, Sitting sitting) {
        Optional<HandIn> before = Files.exists(task.file())
                ? AssignmentReader.read(task.file()).handIn()
                : Optional.empty();
        boolean isOurs = before.filter(one -> one.code().equals(Optional.of(task.code()))
                        && one.digest().equals(task.given().digest()))
                .isPresent();
        if (Files.exists(task.file()) && !isOurs) {
            return Statement.failed(Phrase.sentence(
                    "{0} is there already and is something else; nothing was begun.", Phrase.typed(task.name())));
        }
        HandInDraft draft = new HandInDraft(
                task.given(),
                task.code(),
                before.map(HandIn::notes).orElse(sitting.naming()),
                before.map(HandIn::answers).orElse(List.of()));
        HomeworkTeaching homework = new HomeworkTeaching(draft, task, fromPaper, ending);
        return draft.remaining().isEmpty() ? homework.end(sitting) : homework.begin(sitting);
    }

    private Answer begin(Sitting sitting) {
        LessonTeaching lesson = LessonTeaching.of(entry(), lesson(), this, sitting);
        sitting.teaching().begin(lesson);
        return Answers.of(head(), lesson.next(sitting));
    }

    private Answer head() {
        Phrase title = Phrase.typed(draft.assignment().head().title());
        Phrase left = draft.answered() == 0
                ? Phrase.NOTHING
                : Phrase.counted(
                        draft.answered(),
                        "{0} question of {1} is answered already.",
                        "{0} questions of {1} are answered already.",
                        draft.answered(),
                        draft.all());
        Phrase who = Phrase.sentence(
                "{0}, for {1}; what is answered goes to {2}.",
                title, Phrase.typed(draft.code().text()), Phrase.typed(name));
        return left.isEmpty() ? Statement.of(who) : Statement.of(who, left);
    }

    private LibraryEntry entry() {
        return new LibraryEntry(
                file, "", "", slug(), draft.assignment().head().title(), GRADE, false);
    }

    private String slug() {
        return draft.assignment().id() + "-" + draft.code();
    }

    private Lesson lesson() {
        List<LessonPart> parts = new ArrayList<>();
        String words = fromPaper ? "" : draft.assignment().words();
        if (!words.isEmpty()) {
            List<ProseBlock> blocks = new ArrayList<>();
            for (String paragraph : words.split("\n\\s*\n")) {
                blocks.add(new ProseBlock.Paragraph(List.of(
                        new TextRun(paragraph.strip().replaceAll("\\s+", " "), TextRun.RunStyle.PLAIN))));
            }
            parts.add(new LessonPart.ProsePart(1, blocks));
        }
        parts.add(new LessonPart.DrawnQuestions(1, draft.remaining()));
        return new Lesson(
                slug(), "", "", draft.assignment().head().title(), GRADE, List.of(), List.of(), parts);
    }

    /** Whether the question is one of it. */
    boolean asks(Question question) {
        return draft.asks(question);
    }

    /** Whether verdicts come with the marking alone. */
    public boolean isJudgedLater() {
        return fromPaper || !draft.assignment().terms().atOnce();
    }

    /** Whether hints may be taken. */
    boolean givesHints() {
        return !fromPaper && draft.assignment().terms().hints();
    }

    /** Whether answers count for what the one at the line knows. */
    boolean counts() {
        return !fromPaper;
    }

    /** Whether the answer that is being given to a question is the last that it may have. */
    boolean isLastTry(Question question) {
        return isJudgedLater() || !draft.assignment().terms().allow(draft.tries(question) + 2);
    }

    /** What can be done after an answer that is wrong, or cannot be read. */
    Phrase tryAgain(boolean judged) {
        if (!judged) {
            return givesHints() ? Phrase.sentence("Try again, or: hint.") : Phrase.sentence("Try again.");
        }
        return givesHints() ? Phrase.sentence("Try again, or: hint, why.") : Phrase.sentence("Try again, or: why.");
    }

    /** Takes an answer down, and writes the file. On paper even what cannot be read was answered. */
    void take(JudgedAnswer judged, OpenQuestion asked, int millis, Sitting sitting) {
        if (judged.isRead() || fromPaper) {
            int seconds = fromPaper ? 0 : (millis + 999) / 1000;
            draft.add(judged.question(), judged.text().typed(), asked.hintsGiven(), seconds);
            write(Optional.empty());
        }
    }

    private void write(Optional<LocalDate> given) {
        try {
            WholeFile.write(file, part -> Files.writeString(part, AssignmentWriter.text(draft.handIn(given))));
            trouble = Optional.empty();
        } catch (IOException failed) {
            trouble = Optional.of(Phrase.typed(String.valueOf(failed.getMessage())));
        }
    }

    /** Done: the file is complete. */
    Answer end(Sitting sitting) {
        write(fromPaper ? Optional.empty() : Optional.of(today(sitting)));
        if (trouble.isPresent()) {
            return Statement.failed(Phrase.sentence("{0}, so nothing can be handed in.", trouble.get()));
        }
        Phrase count = Phrase.sentence("{0} of {1} questions are answered.", draft.answered(), draft.all());
        Phrase file = Phrase.typed(name);
        return fromPaper
                ? Answers.of(Statement.of(count), ending.apply(this.file))
                : Statement.of(
                        Phrase.sentence("That was the last question.").then(count),
                        Phrase.sentence("{0} is what you hand in: send it back.", file));
    }

    private static LocalDate today(Sitting sitting) {
        return LocalDate.ofInstant(Instant.ofEpochMilli(sitting.study().now()), ZoneId.systemDefault());
    }

    /** Left in the middle. */
    Answer leave() {
        return Statement.of(Phrase.sentence(
                "{0} keeps what you have answered, {1} of {2}; the same sentence goes on there.",
                Phrase.typed(name), draft.answered(), draft.all()));
    }

    /** What is said to an answer that is judged later. */
    static Phrase noted() {
        return Phrase.sentence("Noted.");
    }
}
