package monochord.view.course;

import java.time.Instant;
import java.util.Locale;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.Pace;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.mastery.SkillMastery;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What is known, as a table for other programs: comma-separated values (RFC 4180 but for the line ends) or JSON. No value
 * holds a comma or a quote.
 *
 * @param time for which it is worked out
 */
public record ProgressTable(Knowledge knowledge, long time) implements Answer {
    private static final String HEAD = "skill,key,mastery,recall,stability_days,asked,right,seconds,last,due";

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder().line(HEAD);
        knowledge.standings().forEach((item, standing) -> text.line(row(item, standing)));
        return text.build();
    }

    private String row(SkillInKey item, SkillMastery standing) {
        return String.join(
                ",",
                item.skill(),
                item.key(),
                four(standing.mastery()),
                four(standing.recall(time)),
                four(standing.memory().stability()),
                Integer.toString(standing.asked()),
                Integer.toString(standing.right()),
                seconds(standing.pace()),
                day(standing.last()),
                day(standing.due()));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "progress")
                .put("time", day(time))
                .objects("items", knowledge.standings().entrySet().stream().toList(), (object, entry) -> {
                    SkillMastery standing = entry.getValue();
                    object.put("skill", entry.getKey().skill())
                            .put("key", entry.getKey().key())
                            .put("mastery", standing.mastery())
                            .put("recall", standing.recall(time))
                            .put("stabilityDays", standing.memory().stability())
                            .put("asked", standing.asked())
                            .put("right", standing.right())
                            .put("seconds", standing.pace().millis() / 1000)
                            .put("last", day(standing.last()))
                            .put("due", day(standing.due()))
                            .put("isDue", standing.isDue(time));
                });
    }

    private static String four(double number) {
        return String.format(Locale.ROOT, "%.4f", number);
    }

    /** Empty where no right answer was given alone. */
    private static String seconds(Pace pace) {
        return pace.answers() == 0 ? "" : String.format(Locale.ROOT, "%.1f", pace.millis() / 1000);
    }

    private static String day(long millis) {
        return Instant.ofEpochMilli(millis / 1000 * 1000).toString();
    }
}
