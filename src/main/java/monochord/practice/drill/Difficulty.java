package monochord.practice.drill;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.LongSupplier;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillMastery;
import monochord.practice.mastery.Tracing;
import monochord.theory.Key;

/**
 * How far a learner has come: the easy subjects of a skill first, and one skill after another.
 *
 * @param steps how many steps harder than that it is to be, below 0 easier
 */
public record Difficulty(Knowledge knowledge, int steps) {
    /** Somebody who has not been asked yet gets this share of the subjects and of the keys, from the easy end. */
    private static final double FIRST_SHARE = 1 / 3.0;

    /** Whoever was asked in so many keys has met a skill from enough sides for its harder subjects. */
    private static final double ENOUGH_KEYS = 8;

    private static final int DRAWS = 40;
    /** So many steps lie between the easiest subject of a skill and all of them. */
    private static final double STEPS = 3;

    public Difficulty(Knowledge knowledge) {
        this(knowledge, 0);
    }

    /** The same, so many steps harder, or easier below 0. */
    public Difficulty shifted(int more) {
        return new Difficulty(knowledge, steps + more);
    }

    /** How probable it is that a skill is known, over the keys in which it was asked; 0 before the first question. */
    double mastery(Skill skill) {
        return knowledge.standings().entrySet().stream()
                .filter(entry -> entry.getKey().skill().equals(skill.id()))
                .map(Map.Entry::getValue)
                .mapToDouble(SkillMastery::mastery)
                .average()
                .orElse(0);
    }

    /** The first of these that is not mastered, the last if all are. */
    public Skill next(List<Skill> skills) {
        return skills.stream()
                .filter(skill -> mastery(skill) < Tracing.MASTERY)
                .findFirst()
                .orElse(skills.get(skills.size() - 1));
    }

    /** One of the keys the learner is ready for, the easy ones first. */
    public Key key(Skill skill, long seed) {
        return open(skill.keys(), skill, new SplittableRandom(~seed));
    }

    /** The keys the learner is ready for, from easy to awkward: a third of them to begin with, in the end all. */
    public List<Key> keys(Skill skill) {
        return skill.keys().subList(0, open(skill.keys().size(), skill));
    }

    private <T> T open(List<T> fromEasyOn, Skill skill, SplittableRandom random) {
        return fromEasyOn.get(random.nextInt(open(fromEasyOn.size(), skill)));
    }

    /** How many of so many, counted from the easy end. */
    private int open(int all, Skill skill) {
        double share = FIRST_SHARE + (1 - FIRST_SHARE) * mastery(skill) + steps / STEPS;
        return Math.max(Math.min(all, 1), (int) Math.ceil(Math.min(1, share) * all));
    }

    /**
     * How many subjects of so many: a few to begin with, and more the better the skill is known and the more keys it was
     * asked in, so that one right answer in one key does not open what no lesson has taught.
     */
    private int openSubjects(int all, Skill skill) {
        long keys = knowledge.standings().keySet().stream()
                .filter(item -> item.skill().equals(skill.id()))
                .count();
        double first = Math.min(1, skill.firstSubjects() / (double) all);
        double known = Math.min(1, mastery(skill) / Tracing.MASTERY) * Math.min(1, keys / ENOUGH_KEYS);
        double share = first + (1 - first) * known + steps / STEPS;
        return (int) Math.max(Math.min(all, skill.firstSubjects()), Math.floor(Math.min(1, share) * all));
    }

    /** A question in any key, another than the one before. */
    public Question another(Skill skill, LongSupplier seeds, Question before) {
        Question drawn = any(skill, seeds.getAsLong());
        for (int i = 0; i < DRAWS && drawn.toString().equals(before.toString()); i++) {
            drawn = any(skill, seeds.getAsLong());
        }
        return drawn;
    }

    private Question any(Skill skill, long seed) {
        return question(skill, key(skill, seed), seed);
    }

    /** A question no harder than the learner is far; the same seed asks the same. */
    public Question question(Skill skill, Key key, long seed) {
        List<String> subjects = skill.subjects(key);
        int all = subjects.size();
        int open = skill.firstSubjects() == 0 ? open(all, skill) : openSubjects(all, skill);
        return skill.question(key, subjects.get(new SplittableRandom(seed).nextInt(open)), seed);
    }
}
