package monochord.shell.sitting;

import java.util.List;
import java.util.Optional;
import monochord.practice.Verdict;
import monochord.practice.drill.Turn;
import monochord.record.Agenda;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Saying;

/** How a sitting opens: in two lines what is due and what comes next, and Enter does it. */
public final class Opening {
    static final String WELCOMED = "welcomed";

    private static final String FIRST = "Good day. Enter begins the first lesson; or type music, a verb, or help.";

    private final Agenda agenda;
    private final long time;
    private boolean reviewed;
    private Welcome welcome;

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
            welcome = new Welcome();
            return welcome.greeting();
        }
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
        String lesson = agenda.title().isEmpty() ? "the first lesson" : agenda.title();
        return begin + lesson + "; or type music, a verb, or help.";
    }

    /** Whether it is being found out where someone new begins. */
    public boolean isAsking() {
        return welcome != null && !welcome.isOver();
    }

    /** Whether it is asked by what names notes go. */
    public boolean asksForNames() {
        return isAsking() && welcome.asksForNames();
    }

    /** What follows a line that passes what is asked, or says what the notes are called; none if it does neither. */
    public Optional<Answer> take(String line, Sitting sitting) {
        if (isAsking() && Welcome.passes(line)) {
            return Optional.of(sitting.teaching().goOn());
        }
        return asksForNames() ? welcome.takeNames(line, sitting) : Optional.empty();
    }

    Answer judged(Verdict verdict, Sitting sitting) {
        return welcome.judged(verdict, sitting);
    }

    /** Asks no more, for the learner has other plans. */
    public void yield(Sitting sitting) {
        if (isAsking()) {
            welcome.end(sitting);
        }
    }

    /** What is due has been brought back, so that Enter does not do it again. */
    void reviewed() {
        reviewed = true;
    }

    /** What is asked is passed; else, once what is due, then the lesson that follows. */
    Answer begin(Sitting sitting) {
        if (isAsking()) {
            return welcome.goOn(sitting);
        }
        if (!reviewed && agenda.due(time) > 0 && !sitting.course().wasTaken()) {
            reviewed();
            List<Turn> turns = Review.turns(Review.USUAL_MINUTES, sitting.study());
            if (!turns.isEmpty()) {
                return sitting.study().withNotices(Review.begin(turns, Review.USUAL_MINUTES, sitting));
            }
        }
        return sitting.course().begin(sitting);
    }
}
