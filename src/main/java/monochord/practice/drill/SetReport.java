package monochord.practice.drill;

import java.util.List;
import java.util.Optional;
import monochord.practice.mastery.SkillInKey;

/**
 * What came of a day's set: how many answers were right, what is firmer than it was, and what comes back tomorrow.
 *
 * @param today how this set went
 * @param last how the one before went; nothing asked if there was none
 * @param firmer what is more surely known than before the set, most gained first; nothing that was new
 * @param tomorrow what comes then
 */
public record SetReport(Tally today, Tally last, List<SkillInKey> firmer, Tomorrow tomorrow) {
    /**
     * @param due how many things are due in a day
     * @param minutes how long they take
     * @param fresh what will be new, if anything
     */
    public record Tomorrow(int due, int minutes, Optional<Turn> fresh) {}

    public SetReport {
        firmer = List.copyOf(firmer);
    }
}
