/**
 * What a learner knows, how well it will keep, and what to bring back when: pure functions of the attempts.
 *
 * <p>{@link monochord.practice.mastery.Attempt} is one answer; the {@link monochord.practice.mastery.Evidence} in it is
 * gathered, in the order of time, into {@link monochord.practice.mastery.Knowledge}, one {@link
 * monochord.practice.mastery.SkillMastery} for each skill in each key. {@link monochord.practice.mastery.Due} chooses from it.
 * Two models run side by side: {@link monochord.practice.mastery.Tracing} says whether something is known, {@link
 * monochord.practice.mastery.Memory} how long it keeps. Times are milliseconds since 1970 in UTC, and handed in.
 *
 * <p>Imports {@code practice}.
 */
package monochord.practice.mastery;
