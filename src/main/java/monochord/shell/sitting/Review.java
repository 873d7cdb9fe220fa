package monochord.shell.sitting;

import java.util.List;
import java.util.Optional;
import monochord.practice.drill.Turn;
import monochord.practice.knowing.Due;
import monochord.practice.knowing.Item;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;

/** What is due, as questions. */
public final class Review {
    public static final int USUAL_MINUTES = 10;

    private static final int SECONDS = 60;

    private Review() {}

    /** What is due now and fits into so many minutes, weakest first. */
    public static List<Turn> turns(int minutes, Study study) {
        return Due.within(minutes * SECONDS, study.now(), study.knowledge()).items().stream()
                .flatMap(item -> turn(item).stream())
                .toList();
    }

    /** Says how many there are, and puts the first. */
    public static Answer begin(List<Turn> turns, int minutes, Sitting sitting) {
        String count = turns.size() == 1 ? "One thing" : turns.size() + " things";
        Answer head = Saying.of(count + " to bring back, weakest first. skip ends it.");
        return Answers.of(head, sitting.teaching().review(turns, minutes));
    }

    /** Nothing where another version knew a skill or a key that this one does not. */
    public static Optional<Turn> turn(Item item) {
        try {
            Key key = Key.parse(item.key());
            return Skills.find(item.skill())
                    .filter(skill -> skill.question(key, 0L).key().equals(key))
                    .map(skill -> new Turn(skill, key));
        } catch (Unreadable unknown) {
            return Optional.empty();
        }
    }
}
