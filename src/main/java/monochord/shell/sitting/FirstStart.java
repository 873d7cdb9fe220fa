package monochord.shell.sitting;

import monochord.course.Course;
import monochord.course.FirstQuestions;
import monochord.course.FirstQuestions.Step;
import monochord.lesson.read.LibraryEntry;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;
import monochord.view.course.AskAnswer;

/** The words of the first start: three questions, and the place they find. */
final class FirstStart {
    private static final String GREETING =
            "Good day. Three short questions find where you begin; Enter passes each.\nMusic, a verb or help works at once.";
    private static final String NAMES = "What do you call the notes: english A B C, german A H C, or latin La Si Do?";

    private FirstStart() {}

    static Answer greeting() {
        return Saying.of(
                StyledText.builder().line(GREETING).line(NAMES, Style.STRONG).build());
    }

    /** Does what follows in the first start, and says it. */
    static Answer follow(Step step, Sitting sitting) {
        if (step instanceof Step.Ask ask) {
            sitting.question().put(ask.question(), "");
            sitting.study().ready();
            return Answers.of(Saying.of(lead(ask.topic())), new AskAnswer(ask.question()));
        }
        return step instanceof Step.Found found
                ? place(found.level(), sitting)
                : Saying.of("Once more, or Enter leaves it.");
    }

    private static String lead(FirstQuestions.Topic topic) {
        return topic == FirstQuestions.Topic.SCALE
                ? "Can you name a major scale? Type its notes."
                : "One from farther on; Enter if it is new to you.";
    }

    private static Answer place(FirstQuestions.Level level, Sitting sitting) {
        sitting.teaching().endFirstStart();
        Course course = sitting.course();
        course.library().find(level.lesson()).map(LibraryEntry::slug).ifPresent(course::resume);
        String begins = course.next()
                .map(entry -> " Enter begins " + Course.title(entry) + "; lessons lists all, learn begins any.")
                .orElse("");
        sitting.linePlace().isSaidThere();
        return Saying.of(StyledText.of(reason(level) + begins));
    }

    private static String reason(FirstQuestions.Level level) {
        return switch (level) {
            case BEGINNING -> "Then we begin at the beginning, on the keys.";
            case LETTERS -> "Letters and signs are what to look at first.";
            case CHORDS -> "Your scales stand, so the chords built on them come next.";
            case MOVING -> "You know the key's own chords, so how they move comes next, and then the borrowed ones.";
            case COLOUR -> "You can name a borrowed chord, so we begin with borrowed colour.";
        };
    }
}
