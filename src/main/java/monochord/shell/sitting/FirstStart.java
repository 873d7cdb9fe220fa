package monochord.shell.sitting;

import java.util.Optional;
import monochord.course.Course;
import monochord.course.FirstQuestions;
import monochord.course.FirstQuestions.FirstStep;
import monochord.course.OpenActivities;
import monochord.lesson.read.LibraryEntry;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;
import monochord.view.course.AskAnswer;

/** The first start: questions to someone new, and the place they find. */
public record FirstStart(Teaching teaching, Sitting sitting, OpenActivities underWay) {
    /** The questions, if they are being asked. */
    public Optional<FirstQuestions> questions() {
        return underWay.firstStart();
    }

    void begin() {
        teaching.begin(new FirstQuestions());
    }

    /** Asks nothing more of someone new, for good. */
    void end() {
        if (questions().isPresent()) {
            teaching.question().clear();
            underWay.leave();
        }
        sitting.settings().keep(Opening.WELCOMED, "yes");
    }

    /** Whoever knows what to do is asked no more. */
    public void giveWay() {
        if (questions().isPresent()) {
            end();
        }
    }

    static Answer greeting() {
        return Statement.of(
                Phrase.sentence("Good day. A few short questions find where you begin; Enter passes each."),
                Phrase.sentence("Music, a verb or help works at once."),
                Phrase.sentence(
                                "What do you call the notes: english {0}, german {1}, or latin {2}?",
                                Phrase.typed("A B C"), Phrase.typed("A H C"), Phrase.typed("La Si Do"))
                        .styled(Style.STRONG));
    }

    /** Does what follows in the first start, and says it. */
    Answer follow(FirstStep step) {
        if (step instanceof FirstStep.PutQuestion ask) {
            sitting.question().put(ask.question(), "");
            sitting.study().ready();
            return Answers.of(Statement.of(lead(ask.topic())), new AskAnswer(ask.question()));
        }
        return step instanceof FirstStep.PlaceFound found
                ? place(found.level())
                : Statement.of(Phrase.sentence("Once more, or Enter leaves it."));
    }

    private static Phrase lead(FirstQuestions.FirstTopic topic) {
        return switch (topic) {
            case NAMES, SCALE -> Phrase.sentence("Can you name a major scale? Type its notes.");
            case DEGREE -> Phrase.sentence("Now a chord of that key.");
            case CHORD -> Phrase.sentence("One from farther on; Enter if it is new to you.");
        };
    }

    private Answer place(FirstQuestions.StartingPoint level) {
        end();
        Course course = sitting.course();
        course.library().find(level.lesson()).map(LibraryEntry::slug).ifPresent(course::resume);
        Phrase begins = course.next()
                .map(entry -> Phrase.sentence(
                        "Enter begins {0}; lessons lists all, learn begins any.", Phrase.typed(Course.title(entry))))
                .orElse(Phrase.NOTHING);
        sitting.linePlace().isSaidThere();
        return Statement.of(reason(level).then(begins));
    }

    private static Phrase reason(FirstQuestions.StartingPoint level) {
        return switch (level) {
            case BEGINNING -> Phrase.sentence("Then we begin at the beginning, on the keys.");
            case LETTERS -> Phrase.sentence("Letters and signs are what to look at first.");
            case CHORDS -> Phrase.sentence("Your scales stand, so the chords built on them come next.");
            case MOVING ->
                Phrase.sentence(
                        "You know the key's own chords, so how they move comes next, and then the borrowed ones.");
            case COLOUR -> Phrase.sentence("You can name a borrowed chord, so we begin with borrowed colour.");
        };
    }
}
