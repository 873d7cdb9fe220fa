package monochord.practice.mastery;

/**
 * What is known or not as one thing: a skill in a key.
 *
 * @param skill the skill's id
 * @param key in its canonical text, {@code D major}
 */
public record SkillInKey(String skill, String key) implements Comparable<SkillInKey> {
    /** Written out, for a class asks for it a million times, and what a record brings along is slow until it is compiled. */
    @Override
    public int hashCode() {
        return 31 * skill.hashCode() + key.hashCode();
    }

    @Override
    public int compareTo(SkillInKey other) {
        int bySkill = skill.compareTo(other.skill);
        return bySkill != 0 ? bySkill : key.compareTo(other.key);
    }
}
