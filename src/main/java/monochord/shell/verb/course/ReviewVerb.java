package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import monochord.course.ReviewSet;
import monochord.practice.drill.Turn;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.LearnerRecord;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;

/** Brings back what is due. */
final class ReviewVerb implements Verb {
    private static final int LONGEST = 240;

    @Override
    public String word() {
        return "review";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of(
                                "bring back what is due, weakest first, and what you miss once more; ten minutes if you do not say"))
                .form(may(takes(Value.MINUTES)))
                .examples("review", "review 5");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        int minutes = sentence.body().isEmpty()
                ? ReviewSet.USUAL_MINUTES
                : sentence.body().read(ReviewVerb::minutes);
        LearnerRecord study = sitting.study();
        List<Turn> turns = ReviewSet.turns(minutes, study.now(), study.knowledge());
        if (turns.isEmpty()) {
            return study.withNotices(Statement.of(
                    Phrase.of("Nothing is due. practise brings something new, learn goes on with the lessons.")));
        }
        return study.withNotices(sitting.teaching().runs().review(turns, minutes));
    }

    private static int minutes(String text) {
        if (!text.matches("[1-9][0-9]{0,2}") || Integer.parseInt(text) > LONGEST) {
            throw Unreadable.because(
                    text, 0, "a time", Clause.of("expected whole minutes from 1 to {0}", LONGEST), "review 10");
        }
        return Integer.parseInt(text);
    }
}
