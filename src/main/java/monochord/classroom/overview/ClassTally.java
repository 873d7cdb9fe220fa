package monochord.classroom.overview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import monochord.classroom.overview.ClassOverview.ClassCell;
import monochord.classroom.overview.ClassOverview.ClassWeek;
import monochord.classroom.overview.ClassOverview.PupilSummary;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.mastery.Tracing;
import monochord.record.PupilAnswer;

/**
 * Counts answers of a class one by one, in any order; it holds eight bytes of each. What is known is traced as for a learner's
 * own progress.
 */
public final class ClassTally {
    private static final double HALF = 0.5;
    private static final long WEEK = 7 * 24 * 60 * 60 * 1000L;
    /** The first Monday of 1970. */
    private static final long MONDAY = 4 * 24 * 60 * 60 * 1000L;

    private final Map<String, Map<SkillInKey, AnswersSoFar>> pupils = new HashMap<>();
    private final SortedMap<Long, int[]> weeks = new TreeMap<>();
    private String lastPupil = "";
    private Map<SkillInKey, AnswersSoFar> lastItems = Map.of();
    private long lastWeek = Long.MIN_VALUE;
    private int[] inLastWeek = {};

    /** Adds one. */
    public void add(PupilAnswer answer) {
        if (!answer.pupil().equals(lastPupil)) {
            lastPupil = answer.pupil();
            lastItems = pupils.computeIfAbsent(lastPupil, code -> new HashMap<>());
        }
        AnswersSoFar answers = lastItems.get(answer.item());
        if (answers == null) {
            answers = new AnswersSoFar();
            lastItems.put(answer.item(), answers);
        }
        answers.add(answer.time(), answer.isKnown());
        if (!answer.isRight() && !answer.misconception().isEmpty()) {
            answers.addMistake(answer.misconception());
        }
        addToWeek(answer);
    }

    private void addToWeek(PupilAnswer answer) {
        long week = Math.floorDiv(answer.time() - MONDAY, WEEK);
        if (week != lastWeek) {
            lastWeek = week;
            inLastWeek = weeks.computeIfAbsent(week, number -> new int[2]);
        }
        inLastWeek[0]++;
        inLastWeek[1] += answer.isKnown() ? 1 : 0;
    }

    /** What came of all that was added so far. */
    public ClassOverview overview() {
        SortedMap<SkillInKey, CellSoFar> cells = new TreeMap<>();
        MistakesSoFar mistakes = new MistakesSoFar();
        List<PupilSummary> summaries = new ArrayList<>();
        new TreeMap<>(pupils).forEach((code, items) -> {
            summaries.add(summary(code, items, cells));
            items.forEach((item, answers) -> answers.mistakes((id, times) -> mistakes.add(code, item, id, times)));
        });
        SortedMap<SkillInKey, ClassCell> grid = new TreeMap<>();
        cells.forEach((item, cell) -> grid.put(item, cell.done()));
        return new ClassOverview(summaries, grid, mistakes.counts(), classWeeks());
    }

    private static PupilSummary summary(
            String code, Map<SkillInKey, AnswersSoFar> items, Map<SkillInKey, CellSoFar> cells) {
        int asked = 0;
        int right = 0;
        int known = 0;
        Map<String, Integer> askedBySkill = new HashMap<>();
        for (Map.Entry<SkillInKey, AnswersSoFar> entry : items.entrySet()) {
            AnswersSoFar answers = entry.getValue();
            double mastery = answers.mastery(Tracing.of(entry.getKey().skill()));
            cells.computeIfAbsent(entry.getKey(), item -> new CellSoFar()).add(code, mastery, answers);
            asked += answers.count();
            askedBySkill.merge(entry.getKey().skill(), answers.count(), Integer::sum);
            right += answers.known();
            known += mastery >= Tracing.MASTERY ? 1 : 0;
        }
        return new PupilSummary(code, asked, right, items.size(), known, askedBySkill);
    }

    private List<ClassWeek> classWeeks() {
        return weeks.entrySet().stream()
                .map(week -> new ClassWeek(week.getKey() * WEEK + MONDAY, week.getValue()[0], week.getValue()[1]))
                .toList();
    }

    /** One skill in one key, pupil by pupil. */
    private static final class CellSoFar {
        private final List<Double> masteries = new ArrayList<>();
        private final List<String> below = new ArrayList<>();
        private int asked;
        private int right;

        void add(String code, double mastery, AnswersSoFar answers) {
            masteries.add(mastery);
            asked += answers.count();
            right += answers.known();
            if (mastery < HALF) {
                below.add(code);
            }
        }

        ClassCell done() {
            masteries.sort(null);
            int middle = masteries.size() / 2;
            double median = masteries.size() % 2 == 1
                    ? masteries.get(middle)
                    : (masteries.get(middle - 1) + masteries.get(middle)) / 2;
            return new ClassCell(median, asked, right, masteries.size(), below);
        }
    }
}
