package monochord.practice.mastery;

import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What a learner knows: how it stands with each skill in each key that was ever asked, and the pace in each skill.
 *
 * <p>The same evidence gives the same knowledge, whatever the order in which it is handed in.
 */
public record Knowledge(SortedMap<SkillInKey, SkillMastery> standings, Map<String, Pace> paces) {
    public Knowledge {
        standings = Collections.unmodifiableSortedMap(new TreeMap<>(standings));
        paces = Map.copyOf(paces);
    }

    /** Of somebody who has not been asked anything. */
    public static Knowledge none() {
        return new Knowledge(new TreeMap<>(), Map.of());
    }

    public static Knowledge of(Collection<Evidence> evidence) {
        KnowledgeBuilder gathering = new KnowledgeBuilder();
        evidence.stream().sorted().forEach(gathering::add);
        return gathering.knowledge();
    }

    /** All but what is not to be asked. */
    public Knowledge without(Predicate<SkillInKey> unwanted) {
        SortedMap<SkillInKey, SkillMastery> left = new TreeMap<>(standings);
        left.keySet().removeIf(unwanted);
        return new Knowledge(left, paces);
    }

    public Optional<SkillMastery> of(SkillInKey item) {
        return Optional.ofNullable(standings.get(item));
    }

    /** The pace in a skill, all keys together. */
    public Pace pace(String skill) {
        return paces.getOrDefault(skill, Pace.NONE);
    }
}
