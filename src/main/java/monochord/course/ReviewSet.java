package monochord.course;

import java.util.List;
import java.util.Optional;
import monochord.practice.drill.Turn;
import monochord.practice.mastery.Due;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/** What is due, as questions. */
public final class ReviewSet {
    /** Minutes of a review, unless somebody says another number. */
    public static final int USUAL_MINUTES = 10;

    private static final int SECONDS = 60;

    private ReviewSet() {}

    /**
     * What is due and fits into so many minutes, weakest first.
     *
     * @param now in milliseconds since 1970 in UTC
     */
    public static List<Turn> turns(int minutes, long now, Knowledge knowledge) {
        return Due.within(minutes * SECONDS, now, knowledge).items().stream()
                .flatMap(item -> turn(item).stream())
                .toList();
    }

    /** Nothing where another version knew a skill or a key that this one does not. */
    public static Optional<Turn> turn(SkillInKey item) {
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
