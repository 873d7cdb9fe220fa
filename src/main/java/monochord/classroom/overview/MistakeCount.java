package monochord.classroom.overview;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import monochord.practice.Misconception;

/**
 * How often a wrong procedure led to an answer, at first tries.
 *
 * @param skills the ids of the skills in which it did
 * @param byPupil how often for each code
 * @param byKey how often in each key
 */
public record MistakeCount(
        Misconception misconception,
        List<String> skills,
        SortedMap<String, Integer> byPupil,
        SortedMap<String, Integer> byKey) {

    public MistakeCount {
        skills = List.copyOf(skills);
        byPupil = Collections.unmodifiableSortedMap(new TreeMap<>(byPupil));
        byKey = Collections.unmodifiableSortedMap(new TreeMap<>(byKey));
    }

    public int count() {
        return byPupil.values().stream().mapToInt(times -> times).sum();
    }

    /** Who, those first who did it most. */
    public List<String> codes() {
        return mostFirst(byPupil);
    }

    /** Where, the key first in which it came most. */
    public List<String> keys() {
        return mostFirst(byKey);
    }

    private static List<String> mostFirst(SortedMap<String, Integer> counts) {
        return counts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Both together. */
    MistakeCount and(MistakeCount other) {
        return new MistakeCount(
                misconception,
                Stream.concat(skills.stream(), other.skills.stream()).distinct().toList(),
                sum(byPupil, other.byPupil),
                sum(byKey, other.byKey));
    }

    private static SortedMap<String, Integer> sum(SortedMap<String, Integer> one, SortedMap<String, Integer> other) {
        SortedMap<String, Integer> both = new TreeMap<>(one);
        other.forEach((name, times) -> both.merge(name, times, Integer::sum));
        return both;
    }
}
