package monochord.classroom.overview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import monochord.practice.Misconception;
import monochord.practice.mastery.SkillInKey;

/** Mistakes of a class, counted for each wrong procedure in each skill. */
final class MistakesSoFar {
    private final Map<String, Optional<Misconception>> known = new HashMap<>();
    private final Map<MistakeInSkill, CountSoFar> counts = new HashMap<>();

    private record MistakeInSkill(String skill, Misconception misconception) {}

    /** How often, for each pupil and in each key. */
    private record CountSoFar(SortedMap<String, Integer> byPupil, SortedMap<String, Integer> byKey) {}

    /** @param misconception its id; one of a later version, which has no name here, is left out */
    void add(String pupil, SkillInKey item, String misconception, int times) {
        known.computeIfAbsent(misconception, Misconception::find).ifPresent(found -> {
            CountSoFar count = counts.computeIfAbsent(
                    new MistakeInSkill(item.skill(), found), made -> new CountSoFar(new TreeMap<>(), new TreeMap<>()));
            count.byPupil.merge(pupil, times, Integer::sum);
            count.byKey.merge(item.key(), times, Integer::sum);
        });
    }

    /** The commonest first. */
    List<MistakeCount> counts() {
        List<MistakeCount> sorted = new ArrayList<>();
        counts.forEach((made, count) -> sorted.add(
                new MistakeCount(made.misconception(), List.of(made.skill()), count.byPupil(), count.byKey())));
        sorted.sort(Comparator.comparingInt(MistakeCount::count)
                .reversed()
                .thenComparing(count -> count.skills().get(0))
                .thenComparing(MistakeCount::misconception));
        return sorted;
    }
}
