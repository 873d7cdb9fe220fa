package monochord.classroom.overview;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import monochord.practice.Misconception;
import monochord.practice.mastery.SkillInKey;

/**
 * What a class can do in which key, and which mistakes it makes.
 *
 * @param pupils one for each code, in the order of the codes
 * @param grid by skill and key
 * @param mistakes one for each wrong procedure in each skill, the commonest first
 * @param weeks in the order of time
 */
public record ClassOverview(
        List<PupilSummary> pupils,
        SortedMap<SkillInKey, ClassCell> grid,
        List<MistakeCount> mistakes,
        List<ClassWeek> weeks) {

    /**
     * One pupil.
     *
     * @param asked how many questions were answered
     * @param right how many of them were right at the first try and alone
     * @param items how many skills in a key were asked
     * @param known how many of them are known
     * @param askedBySkill how many questions were answered in each skill, by its id
     */
    public record PupilSummary(
            String code, int asked, int right, int items, int known, Map<String, Integer> askedBySkill) {
        public PupilSummary {
            askedBySkill = Map.copyOf(askedBySkill);
        }
    }

    /**
     * One skill in one key over the class.
     *
     * @param mastery the median of the pupils who were asked: how probable it is that it is known, from 0 to 1
     * @param asked how many questions were answered
     * @param right how many of them were right at the first try and alone
     * @param pupils how many pupils were asked
     * @param below the codes of those who know it with a probability under one half, in order
     */
    public record ClassCell(double mastery, int asked, int right, int pupils, List<String> below) {
        public ClassCell {
            below = List.copyOf(below);
        }
    }

    /**
     * One week, which begins on Monday at midnight in UTC.
     *
     * @param from its beginning, in milliseconds since 1970 in UTC
     */
    public record ClassWeek(long from, int asked, int right) {}

    public ClassOverview {
        pupils = List.copyOf(pupils);
        grid = Collections.unmodifiableSortedMap(new TreeMap<>(grid));
        mistakes = List.copyOf(mistakes);
        weeks = List.copyOf(weeks);
    }

    public List<String> codes() {
        return pupils.stream().map(PupilSummary::code).toList();
    }

    /** How many questions in that skill were answered. */
    public int asked(String skill) {
        return cells(skill).mapToInt(ClassCell::asked).sum();
    }

    /** How many of them were right at the first try and alone. */
    public int right(String skill) {
        return cells(skill).mapToInt(ClassCell::right).sum();
    }

    private Stream<ClassCell> cells(String skill) {
        return grid.entrySet().stream()
                .filter(cell -> cell.getKey().skill().equals(skill))
                .map(Map.Entry::getValue);
    }

    public int asked() {
        return pupils.stream().mapToInt(PupilSummary::asked).sum();
    }

    public int right() {
        return pupils.stream().mapToInt(PupilSummary::right).sum();
    }

    /** The mistakes of all skills together, each wrong procedure once, the commonest first. */
    public List<MistakeCount> mistakesOfAllSkills() {
        SortedMap<Misconception, MistakeCount> all = new TreeMap<>();
        mistakes.forEach(one -> all.merge(one.misconception(), one, MistakeCount::and));
        List<MistakeCount> sorted = new ArrayList<>(all.values());
        sorted.sort(Comparator.comparingInt(MistakeCount::count).reversed().thenComparing(MistakeCount::misconception));
        return sorted;
    }
}
