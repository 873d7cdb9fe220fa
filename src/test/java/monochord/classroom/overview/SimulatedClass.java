package monochord.classroom.overview;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Mistake;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.mastery.Attempt;
import monochord.practice.skill.Skills;
import monochord.record.KeptAttempt;
import monochord.theory.Key;

/**
 * Thirty pupils who do twenty questions a week. Some follow wrong procedures, each at a rate of its own; all slip, the weaker
 * ones more often, and a slip is any of the mistakes that could be made there. Their answers are judged by the engine.
 */
final class SimulatedClass {
    static final int PUPILS = 30;
    static final int QUESTIONS = 20;
    private static final LocalDate FIRST_MONDAY = LocalDate.of(2026, 9, 7);

    private static final List<Procedure> PROCEDURES = List.of(
            new Procedure("triad-spelling", Misconception.SPELLED_BY_SOUND),
            new Procedure("triad-spelling", Misconception.LETTERS_ONLY),
            new Procedure("scale-spelling", Misconception.SIGNATURE_FORGOTTEN),
            new Procedure("scale-spelling", Misconception.SPELLED_BY_SOUND),
            new Procedure("interval", Misconception.COUNTED_FROM_ZERO),
            new Procedure("interval", Misconception.WRONG_WAY),
            new Procedure("key-signature", Misconception.SHARPS_FOR_FLATS),
            new Procedure("key-signature", Misconception.PARALLEL_FOR_RELATIVE),
            new Procedure("borrowed-chord", Misconception.NOT_LOWERED),
            new Procedure("borrowed-chord", Misconception.RELATIVE_FOR_PARALLEL),
            new Procedure("lowered-degree", Misconception.NOT_LOWERED),
            new Procedure("lowered-degree", Misconception.SPELLED_BY_SOUND),
            new Procedure("degree-chord", Misconception.SPELLED_BY_SOUND),
            new Procedure("degree-chord", Misconception.COUNTED_FROM_ZERO));

    private final Random chance;
    private final List<Planted> planted = new ArrayList<>();
    private final List<Skill> skills = new ArrayList<>();
    private final double[] slips = new double[PUPILS];

    /** A wrong procedure in a skill. */
    record Procedure(String skill, Misconception misconception) {}

    /** One that some pupils follow, at this rate where it could be followed. */
    record Planted(Procedure procedure, Set<Integer> pupils, double rate) {}

    /** Plants wrong procedures in three of four skills, which are asked each week. */
    SimulatedClass(long seed) {
        chance = new Random(seed);
        for (int i = 0; i < PUPILS; i++) {
            slips[i] = 0.05 + 0.15 * chance.nextDouble();
        }
        List<Procedure> all = new ArrayList<>(PROCEDURES);
        Collections.shuffle(all, chance);
        for (Procedure procedure : all) {
            Skill skill = Skills.find(procedure.skill()).orElseThrow();
            if (skills.size() < 4 && !skills.contains(skill)) {
                skills.add(skill);
                if (planted.size() < 3) {
                    planted.add(new Planted(procedure, some(), 0.4 + 0.4 * chance.nextDouble()));
                }
            }
        }
    }

    /** A third to a half of the class. */
    private Set<Integer> some() {
        int count = PUPILS / 3 + chance.nextInt(PUPILS / 6 + 1);
        Set<Integer> pupils = new HashSet<>();
        while (pupils.size() < count) {
            pupils.add(chance.nextInt(PUPILS));
        }
        return pupils;
    }

    List<Planted> planted() {
        return planted;
    }

    static String code(int pupil) {
        return "7b-%02d".formatted(pupil + 1);
    }

    /** What all hand in for that week, from 0. */
    List<KeptAttempt> week(int week) {
        List<KeptAttempt> all = new ArrayList<>();
        long time = FIRST_MONDAY
                .plusWeeks(week)
                .plusDays(3)
                .atStartOfDay(ZoneOffset.UTC)
                .toInstant()
                .toEpochMilli();
        for (int pupil = 0; pupil < PUPILS; pupil++) {
            for (int item = 0; item < QUESTIONS; item++) {
                Question question = question(skills.get(item % skills.size()));
                all.add(new KeptAttempt(answered(question, pupil, time + item), code(pupil), "week-" + week));
            }
        }
        return all;
    }

    private Question question(Skill skill) {
        List<Key> keys = skill.keys();
        return skill.question(keys.get(chance.nextInt(Math.min(12, keys.size()))), chance.nextLong());
    }

    private Attempt answered(Question question, int pupil, long time) {
        String answer = answer(question, pupil);
        Verdict verdict = question.judge(answer);
        if (verdict.grade() == Grade.UNREADABLE) {
            throw new AssertionError(question + ": " + answer);
        }
        return new Attempt(
                time,
                "",
                question.skillId(),
                question.subject(),
                question.key().toString(),
                question.seed(),
                answer,
                verdict.grade(),
                verdict.misconception() == null ? "" : verdict.misconception(),
                4000,
                0,
                0);
    }

    private String answer(Question question, int pupil) {
        List<Mistake> mistakes = question.mistakes();
        for (Planted one : planted) {
            boolean follows = one.procedure().skill().equals(question.skillId())
                    && one.pupils().contains(pupil)
                    && chance.nextDouble() < one.rate();
            List<Mistake> led = mistakes.stream()
                    .filter(mistake ->
                            mistake.misconception() == one.procedure().misconception())
                    .sorted(Comparator.comparing(Mistake::answer))
                    .toList();
            if (follows && !led.isEmpty()) {
                return led.get(chance.nextInt(led.size())).answer();
            }
        }
        boolean slips = chance.nextDouble() < this.slips[pupil] && !mistakes.isEmpty();
        return slips ? mistakes.get(chance.nextInt(mistakes.size())).answer() : question.expected();
    }
}
