package monochord.practice.knowing;

/**
 * What is known or not as one thing: a skill in a key.
 *
 * @param skill the skill's id
 * @param key in its canonical text, {@code D major}
 */
public record Item(String skill, String key) implements Comparable<Item> {
    @Override
    public int compareTo(Item other) {
        int bySkill = skill.compareTo(other.skill);
        return bySkill != 0 ? bySkill : key.compareTo(other.key);
    }
}
