package monochord.classroom.overview;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import monochord.practice.Misconception;
import monochord.practice.Mistake;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/**
 * What can go wrong in a skill: in how many of its questions a mistake can be made, and how many of all mistakes it is. Both
 * are counted in some questions, in keys from easy to awkward.
 *
 * @param allowed shares of the questions, from 0 to 1
 * @param shares of all mistakes, from 0 to 1
 */
record MistakeChances(Map<Misconception, Double> allowed, Map<Misconception, Double> shares) {
    private static final int KEYS = 6;
    private static final int IN_A_KEY = 2;

    static MistakeChances of(Skill skill) {
        Map<Misconception, Double> allowed = new EnumMap<>(Misconception.class);
        Map<Misconception, Double> shares = new EnumMap<>(Misconception.class);
        int questions = 0;
        List<Key> keys = skill.keys();
        for (int i = 0; i < KEYS; i++) {
            Key key = keys.get(i * keys.size() / KEYS);
            for (int seed = 0; seed < IN_A_KEY; seed++) {
                List<Mistake> mistakes = mistakes(skill, key, seed);
                Set<Misconception> once = EnumSet.noneOf(Misconception.class);
                for (Mistake mistake : mistakes) {
                    shares.merge(mistake.misconception(), 1.0 / mistakes.size(), Double::sum);
                    once.add(mistake.misconception());
                }
                once.forEach(one -> allowed.merge(one, 1.0, Double::sum));
                questions++;
            }
        }
        double all = Math.max(1, questions);
        allowed.replaceAll((one, count) -> count / all);
        shares.replaceAll((one, count) -> count / all);
        return new MistakeChances(allowed, shares);
    }

    private static List<Mistake> mistakes(Skill skill, Key key, long seed) {
        try {
            Question question = skill.question(key, seed);
            return question.mistakes();
        } catch (Unreadable nothingToAskThere) {
            return List.of();
        }
    }

    double allowed(Misconception misconception) {
        return allowed.getOrDefault(misconception, 0.0);
    }

    double share(Misconception misconception) {
        return shares.getOrDefault(misconception, 0.0);
    }
}
