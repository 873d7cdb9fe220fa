package monochord.classroom.overview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.classroom.overview.ClassOverview.PupilSummary;
import monochord.practice.Skill;
import monochord.practice.mastery.Tracing;
import monochord.practice.skill.Skills;

/**
 * A wrong procedure that pupils follow, told from slips. A slip leads now here, now there, and seldom to the same mistake
 * again; who follows a procedure makes its mistake in every other question that allows it. For each pupil Bayes' rule weighs
 * the two against each other: how often the mistake was made, in how many answers, how many questions allow it, and how many
 * of the mistakes that could be made are of its kind. Our own model, no source; the rates are ours.
 *
 * @param pupils how many follow it, as is to be expected
 * @param followers the codes of those who rather do than not, those first who made it most
 */
record FollowedProcedure(MistakeCount mistake, Skill skill, double pupils, List<String> followers) {
    /** In how many of the questions that allow it somebody makes the mistake who follows the procedure. */
    private static final double RATE = 0.5;
    /** How many pupils follow a procedure, before anything is known. */
    private static final double PRIOR = 0.2;

    /** Nobody slips less, as is taken for granted where knowledge is traced. */
    private static final double FEWEST_SLIPS = Tracing.TYPED.slip();

    private static final double RAREST = 0.01;
    /** Fewer than these are told of nobody, but in a very small class. */
    private static final double ENOUGH = 1;

    private static final double HALF = 0.5;
    private static final int MOST_WEIGHED = 12;
    private static final int SMALL_CLASS = 4;

    /** Those that are worth speaking of, the one with the most pupils first. */
    static List<FollowedProcedure> all(ClassOverview overview) {
        Map<String, MistakeChances> chances = new HashMap<>();
        List<FollowedProcedure> all = new ArrayList<>();
        for (MistakeCount mistake : likeliest(overview)) {
            Skills.find(mistake.skills().get(0)).ifPresent(skill -> {
                MistakeChances its = chances.computeIfAbsent(skill.id(), id -> MistakeChances.of(skill));
                all.add(of(mistake, skill, its, overview));
            });
        }
        double least = overview.pupils().size() < SMALL_CLASS ? HALF : ENOUGH;
        all.removeIf(one -> one.pupils < least);
        all.sort(Comparator.comparingDouble(FollowedProcedure::pupils).reversed());
        return all;
    }

    /** Those that most pupils made more than once; only these are weighed, for that takes questions of their skill. */
    private static List<MistakeCount> likeliest(ClassOverview overview) {
        return overview.mistakes().stream()
                .sorted(Comparator.comparingLong(FollowedProcedure::again).reversed())
                .limit(MOST_WEIGHED)
                .toList();
    }

    private static long again(MistakeCount mistake) {
        return mistake.byPupil().values().stream().filter(times -> times > 1).count();
    }

    private static FollowedProcedure of(
            MistakeCount mistake, Skill skill, MistakeChances chances, ClassOverview overview) {
        double allowed = Math.max(RAREST, chances.allowed(mistake.misconception()));
        double share = Math.max(RAREST, chances.share(mistake.misconception()));
        double follows = RATE * allowed;
        double slips = Math.min(slipRate(mistake, overview) * share, follows);
        Map<String, Double> byCode = new HashMap<>();
        for (PupilSummary pupil : overview.pupils()) {
            int made = mistake.byPupil().getOrDefault(pupil.code(), 0);
            int asked = pupil.askedBySkill().getOrDefault(skill.id(), 0);
            byCode.put(pupil.code(), made == 0 ? 0 : probability(made, asked, follows, slips));
        }
        List<String> followers = mistake.codes().stream()
                .filter(code -> byCode.getOrDefault(code, 0.0) >= HALF)
                .toList();
        double pupils = byCode.values().stream().mapToDouble(one -> one).sum();
        return new FollowedProcedure(mistake, skill, pupils, followers);
    }

    /** How often answers in that skill are wrong in other ways. */
    private static double slipRate(MistakeCount mistake, ClassOverview overview) {
        String skill = mistake.skills().get(0);
        int asked = overview.asked(skill);
        return Math.max(FEWEST_SLIPS, (asked - overview.right(skill) - mistake.count()) / (double) Math.max(1, asked));
    }

    private static double probability(int made, int asked, double follows, double slips) {
        double odds = Math.log(PRIOR / (1 - PRIOR))
                + made * Math.log(follows / slips)
                + (asked - made) * Math.log((1 - follows) / (1 - slips));
        return 1 / (1 + Math.exp(-odds));
    }
}
