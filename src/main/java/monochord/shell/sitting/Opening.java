package monochord.shell.sitting;

import java.util.List;
import monochord.page.StyledText;
import monochord.practice.drill.Turn;
import monochord.record.Agenda;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Saying;

/** How a sitting opens: in two lines what is due and what comes next, and Enter does it. */
public final class Opening {
    private static final String FIRST = "Good day. Enter begins the first lesson; or type music, a verb, or help.";

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

    /** What to say before the first prompt. */
    public Answer greeting() {
        return Saying.of(StyledText.of(agenda.isEmpty() ? FIRST : due() + "\n" + next()));
    }

    private String due() {
        int due = agenda.due(time);
        return switch (due) {
            case 0 -> "Good day. Nothing is due today.";
            case 1 -> "Good day. One thing is due; Enter brings it back.";
            default ->
                "Good day. " + due + " things are due, some " + agenda.minutes(time)
                        + " min; Enter begins with the weakest.";
        };
    }

    private String next() {
        String begin = agenda.due(time) > 0 ? "Then comes " : "Enter begins ";
        return agenda.title().isEmpty()
                ? "practise and ask take any skill; progress shows where you stand."
                : begin + agenda.title() + "; or type music, a verb, or help.";
    }

    /** What is due has been brought back, so that Enter does not do it again. */
    void reviewed() {
        reviewed = true;
    }

    /** Once what is due, then the lesson that follows. */
    Answer begin(Sitting sitting) {
        if (!reviewed && agenda.due(time) > 0 && !sitting.course().wasTaken()) {
            reviewed();
            List<Turn> turns = Review.turns(Review.USUAL_MINUTES, sitting.study());
            if (!turns.isEmpty()) {
                return sitting.study().withNotices(sitting.review(turns, Review.USUAL_MINUTES));
            }
        }
        return sitting.course().begin(sitting);
    }
}
