package monochord.classroom.overview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import monochord.classroom.overview.ClassOverview.ClassCell;
import monochord.practice.Skill;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/**
 * What to teach next, and why.
 *
 * <p>A wrong procedure that several pupils follow comes first, the one with the most pupils before the others, for one sentence
 * helps them all. Behind these come skills in whose keys pupils are below one half, whatever they did wrong. Common teaching
 * experience, no source.
 *
 * @param sentence what to do
 * @param evidence the figures behind it, and who
 * @param skill its id
 * @param file a name for the practice, without its ending
 * @param keys in which it is wanted most, that first; never empty
 * @param codes of the pupils who need it, in the order in which they do
 */
public record NextTopic(
        Phrase sentence, Phrase evidence, String skill, String file, List<Key> keys, List<String> codes) {
    private static final int MOST_KEYS = 4;
    /** More codes than these are counted instead. */
    private static final int MOST_CODES = 4;

    public NextTopic {
        keys = List.copyOf(keys);
        codes = List.copyOf(codes);
    }

    /** The sentence that makes practice of it. */
    public String assign() {
        return "assign " + skill + " in " + keys.stream().map(NextTopic::typed).collect(Collectors.joining(", "))
                + " count 10 --out " + file + ".md";
    }

    private static String typed(Key key) {
        return key.tonic() + (key.isMinor() ? "m" : "");
    }

    /** All there is, most wanted first. */
    public static List<NextTopic> all(ClassOverview overview) {
        List<NextTopic> topics = new ArrayList<>();
        FollowedProcedure.all(overview).forEach(followed -> topics.add(of(followed, overview)));
        Set<String> skills = topics.stream().map(NextTopic::skill).collect(Collectors.toSet());
        weakKeys(overview).forEach((id, keys) -> {
            if (!skills.contains(id)) {
                Skills.find(id).ifPresent(skill -> topics.add(of(skill, keys)));
            }
        });
        return topics;
    }

    private static NextTopic of(FollowedProcedure followed, ClassOverview overview) {
        MistakeCount mistake = followed.mistake();
        List<String> codes = followed.followers().isEmpty() ? mistake.codes() : followed.followers();
        boolean areAll = codes.size() == mistake.codes().size();
        int asked = overview.asked(followed.skill().id());
        return new NextTopic(
                Phrase.sentence("{0}: go over this rule.", followed.skill().title())
                        .then(mistake.misconception().rule()),
                Phrase.sentence(
                        "{0}: {1} in {2}, {3}.",
                        mistake.misconception().words(),
                        Phrase.counted(mistake.count(), "{0} time", "{0} times", mistake.count()),
                        Phrase.counted(asked, "{0} answer", "{0} answers", asked),
                        areAll ? Phrase.of("by {0}", who(codes)) : Phrase.of("mostly by {0}", who(codes))),
                followed.skill().id(),
                mistake.misconception().id(),
                keys(mistake.keys()),
                codes);
    }

    private static NextTopic of(Skill skill, Map<SkillInKey, ClassCell> cells) {
        List<String> names = cells.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<SkillInKey, ClassCell> cell) ->
                                cell.getValue().below().size())
                        .reversed())
                .map(cell -> cell.getKey().key())
                .toList();
        List<Key> keys = keys(names);
        List<String> codes = cells.values().stream()
                .flatMap(cell -> cell.below().stream())
                .distinct()
                .sorted()
                .toList();
        int asked = cells.values().stream().mapToInt(ClassCell::asked).sum();
        int right = cells.values().stream().mapToInt(ClassCell::right).sum();
        return new NextTopic(
                Phrase.sentence("{0}: practise it in {1}.", skill.title(), Phrase.list(keys)),
                Phrase.sentence(
                        "There {0} right at the first try; not yet sure: {1}.", rightOf(right, asked), who(codes)),
                skill.id(),
                skill.id(),
                keys,
                codes);
    }

    private static Phrase rightOf(int right, int asked) {
        return Phrase.counted(
                right,
                new Phrase.Forms("{0} of {1} answers was", "{0} of {1} answers were", "none of {1} answers was"),
                right,
                asked);
    }

    private static Phrase who(List<String> codes) {
        List<Phrase> names =
                codes.stream().limit(MOST_CODES).map(Phrase::typed).collect(Collectors.toCollection(ArrayList::new));
        int more = codes.size() - names.size();
        if (more > 0) {
            names.add(Phrase.counted(more, "{0} more", "{0} more", more));
        }
        return Phrase.list(names);
    }

    /** Skills with keys in which two pupils or more are below one half, and most of those who were asked; worst first. */
    private static Map<String, Map<SkillInKey, ClassCell>> weakKeys(ClassOverview overview) {
        int least = Math.min(2, overview.pupils().size());
        SortedMap<String, Map<SkillInKey, ClassCell>> bySkill = new TreeMap<>();
        overview.grid().forEach((item, cell) -> {
            if (cell.below().size() >= least && cell.below().size() * 2 >= cell.pupils()) {
                bySkill.computeIfAbsent(item.skill(), skill -> new TreeMap<>()).put(item, cell);
            }
        });
        Map<String, Map<SkillInKey, ClassCell>> worstFirst = new LinkedHashMap<>();
        bySkill.entrySet().stream()
                .sorted(Comparator.comparingInt(NextTopic::below).reversed())
                .forEach(entry -> worstFirst.put(entry.getKey(), entry.getValue()));
        return worstFirst;
    }

    private static int below(Map.Entry<String, Map<SkillInKey, ClassCell>> cells) {
        return cells.getValue().values().stream()
                .mapToInt(cell -> cell.below().size())
                .sum();
    }

    private static List<Key> keys(List<String> names) {
        List<Key> keys = new ArrayList<>();
        for (String name : names) {
            try {
                keys.add(Key.parse(name));
            } catch (Unreadable ofAnotherVersion) {
                continue;
            }
            if (keys.size() == MOST_KEYS) {
                break;
            }
        }
        return keys;
    }
}
