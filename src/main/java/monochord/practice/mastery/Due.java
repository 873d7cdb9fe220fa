package monochord.practice.mastery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What is to be brought back at a time, weakest first.
 *
 * @param seconds how long all of it may take
 */
public record Due(List<SkillInKey> items, int seconds) {
    private static final double USUAL_MILLIS = 20_000;

    /** For reading the question and the verdict. */
    private static final double AROUND_MILLIS = 10_000;

    public Due {
        items = List.copyOf(items);
    }

    /** All that is due. */
    public static Due at(long time, Knowledge knowledge) {
        return within(Integer.MAX_VALUE, time, knowledge);
    }

    /**
     * As much of what is due as can be asked in a while, one thing at least if any is due. What stands equally firmly comes
     * in the order of its name.
     *
     * @param seconds the while
     * @param time in milliseconds since 1970 in UTC
     */
    public static Due within(int seconds, long time, Knowledge knowledge) {
        List<SkillInKey> chosen = new ArrayList<>();
        double needed = 0;
        for (SkillInKey item : weakestFirst(time, knowledge)) {
            double more = secondsFor(item, knowledge);
            if (!chosen.isEmpty() && needed + more > seconds) {
                break;
            }
            chosen.add(item);
            needed += more;
        }
        return new Due(chosen, (int) Math.ceil(needed));
    }

    private static List<SkillInKey> weakestFirst(long time, Knowledge knowledge) {
        return knowledge.standings().entrySet().stream()
                .filter(entry -> entry.getValue().isDue(time))
                .sorted(Comparator.comparingDouble((Map.Entry<SkillInKey, SkillMastery> entry) ->
                        entry.getValue().strength(time)))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** How long a question on it takes: at the pace in its key, else in its skill, else at a usual one. */
    public static double secondsFor(SkillInKey item, Knowledge knowledge) {
        Pace inKey = knowledge.of(item).map(SkillMastery::pace).orElse(Pace.NONE);
        Pace pace = inKey.answers() > 0 ? inKey : knowledge.pace(item.skill());
        return ((pace.answers() > 0 ? pace.millis() : USUAL_MILLIS) + AROUND_MILLIS) / 1000;
    }
}
