package monochord.course;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import monochord.practice.Skill;
import monochord.practice.drill.Difficulty;
import monochord.practice.drill.SetReport;
import monochord.practice.drill.Turn;
import monochord.practice.mastery.Due;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.skill.Skills;
import monochord.record.KeptSet;
import monochord.theory.Key;

/**
 * Some ten minutes of questions for one day: what is due, one new thing, keys and skills mixed, and at the end one thing for
 * the hands. It begins with the easiest of its keys, never with the hardest.
 *
 * <p>How much of what goes into it is our own choice, no source; why keys are mixed is said in {@code practice.drill}.
 *
 * @param turns the questions, in their order
 * @param fresh what has never been asked before, if anything
 * @param hands what is to be found at the instrument
 */
public record DailySet(List<Turn> turns, Optional<Turn> fresh, Turn hands) {
    private static final int DUE_SECONDS = 6 * 60;
    private static final int LEAST_QUESTIONS = 8;
    /** What is new comes from so many skills in turn. */
    private static final int SKILLS_AT_ONCE = 3;
    /** While so many things are shaky, nothing new is added. */
    private static final int MOST_SHAKY = 6;

    private static final double SHAKY = 0.5;
    private static final long DAY = 24 * 60 * 60 * 1000L;
    private static final double MINUTE = 60;
    /** A smaller gain in the probability that something is known is not worth a word. */
    private static final double GAIN = 0.02;

    public DailySet {
        turns = List.copyOf(turns);
    }

    /** What a learner knows, and where: all that a set depends on besides time and chance. */
    public record Learner(Knowledge knowledge, int book, Predicate<Skill> askable) {
        /** @param book in which the learner stands, from 1 */
        public Learner {}
    }

    /**
     * @param now in milliseconds since 1970 in UTC
     * @param seed the same one gives the same set
     */
    public static DailySet of(Learner learner, long now, long seed) {
        Optional<Turn> fresh = fresh(learner);
        List<Turn> chosen = dueTurns(learner, now);
        fresh.ifPresent(chosen::add);
        fill(chosen, learner, now);
        return new DailySet(ordered(chosen, seed), fresh, hands(fresh, learner, seed));
    }

    private static List<Turn> dueTurns(Learner learner, long now) {
        List<Turn> turns = new ArrayList<>();
        double seconds = 0;
        for (SkillInKey item : due(learner, now)) {
            seconds += Due.secondsFor(item, learner.knowledge);
            if (turns.isEmpty() || seconds <= DUE_SECONDS) {
                turns.add(turn(item, learner).orElseThrow());
            }
        }
        return turns;
    }

    /** What is due then and can be asked, weakest first. */
    static List<SkillInKey> due(Learner learner, long time) {
        return Due.at(time, learner.knowledge).items().stream()
                .filter(item -> turn(item, learner).isPresent())
                .toList();
    }

    private static Optional<Turn> turn(SkillInKey item, Learner learner) {
        return ReviewSet.turn(item).filter(turn -> learner.askable.test(turn.skill()));
    }

    /** The next thing that has never been asked, from where the learner stands; none while much else is shaky. */
    public static Optional<Turn> fresh(Learner learner) {
        long shaky = learner.knowledge.standings().values().stream()
                .filter(standing -> standing.mastery() < SHAKY)
                .count();
        if (shaky >= MOST_SHAKY) {
            return Optional.empty();
        }
        return Syllabus.from(learner.book).stream()
                .filter(learner.askable)
                .filter(skill -> next(skill, learner).isPresent())
                .limit(SKILLS_AT_ONCE)
                .min(Comparator.comparingLong(skill -> asked(skill, learner.knowledge)))
                .flatMap(skill -> next(skill, learner));
    }

    private static long asked(Skill skill, Knowledge knowledge) {
        return knowledge.standings().keySet().stream()
                .filter(item -> item.skill().equals(skill.id()))
                .count();
    }

    /** The easiest key the learner is ready for and has not been asked in. */
    private static Optional<Turn> next(Skill skill, Learner learner) {
        return new Difficulty(learner.knowledge)
                .keys(skill).stream()
                        .filter(key -> learner.knowledge
                                .of(new SkillInKey(skill.id(), key.toString()))
                                .isEmpty())
                        .findFirst()
                        .map(key -> new Turn(skill, key));
    }

    /** What is not due yet, weakest first; where there is not enough of it, the same as is there already in other keys. */
    private static void fill(List<Turn> chosen, Learner learner, long now) {
        learner.knowledge.standings().entrySet().stream()
                .sorted(Comparator.comparingDouble(entry -> entry.getValue().strength(now)))
                .flatMap(entry -> turn(entry.getKey(), learner).stream())
                .filter(turn -> !chosen.contains(turn))
                .limit(Math.max(0, LEAST_QUESTIONS - chosen.size()))
                .forEach(chosen::add);
        Difficulty level = new Difficulty(learner.knowledge);
        Skill last = chosen.isEmpty()
                ? Syllabus.from(learner.book).stream()
                        .filter(learner.askable)
                        .findFirst()
                        .orElseThrow()
                : chosen.get(chosen.size() - 1).skill();
        List<Key> keys = level.keys(last);
        for (int i = 0; chosen.size() < LEAST_QUESTIONS; i++) {
            chosen.add(new Turn(last, keys.get(i % keys.size())));
        }
    }

    /** Shuffled, the easiest key first, and no key twice in a row where that can be. */
    private static List<Turn> ordered(List<Turn> chosen, long seed) {
        List<Turn> left = new ArrayList<>(chosen);
        Collections.shuffle(left, new Random(seed));
        List<Turn> order = new ArrayList<>();
        order.add(
                left.stream().min(Comparator.comparingDouble(Turn::difficulty)).orElseThrow());
        left.remove(order.get(0));
        while (!left.isEmpty()) {
            Key before = order.get(order.size() - 1).key();
            Turn next = left.stream()
                    .filter(turn -> !turn.key().equals(before))
                    .findFirst()
                    .orElse(left.get(0));
            left.remove(next);
            order.add(next);
        }
        return order;
    }

    /** A scale, a chord or a borrowed chord to be found at the keys, by how far the learner is. */
    private static Turn hands(Optional<Turn> fresh, Learner learner, long seed) {
        String id = switch (learner.book) {
            case 0, 1 -> "scale-spelling";
            case 2, 3 -> "triad-spelling";
            case 4 -> "seventh-spelling";
            default -> "borrowed-chord";
        };
        Skill skill = Skills.find(id).orElseThrow();
        List<Key> open = new Difficulty(learner.knowledge).keys(skill);
        Key key = fresh.map(Turn::key)
                .filter(open::contains)
                .orElseGet(() -> open.get((int) Math.floorMod(seed, (long) open.size())));
        return new Turn(skill, key);
    }

    /**
     * What came of a set.
     *
     * @param kept how far it has come
     * @param before what was known when it began
     * @param learner as it is now
     */
    public static SetReport report(KeptSet kept, Knowledge before, Learner learner, long now) {
        List<SkillInKey> firmer = before.standings().keySet().stream()
                .filter(item -> gain(item, before, learner) > GAIN)
                .sorted(Comparator.comparingDouble(item -> -gain(item, before, learner)))
                .toList();
        List<SkillInKey> due = due(learner, now + DAY);
        double seconds = due.stream()
                .mapToDouble(item -> Due.secondsFor(item, learner.knowledge))
                .sum();
        SetReport.Tomorrow tomorrow =
                new SetReport.Tomorrow(due.size(), (int) Math.ceil(seconds / MINUTE), fresh(learner));
        return new SetReport(kept.now(), kept.before(), firmer, tomorrow);
    }

    private static double gain(SkillInKey item, Knowledge before, Learner learner) {
        return learner.knowledge.of(item).orElseThrow().mastery()
                - before.of(item).orElseThrow().mastery();
    }
}
