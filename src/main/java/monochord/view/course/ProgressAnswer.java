package monochord.view.course;

import java.util.Locale;
import java.util.Map;
import monochord.practice.knowing.Due;
import monochord.practice.knowing.Item;
import monochord.practice.knowing.Knowledge;
import monochord.practice.knowing.Standing;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.Signs;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.ProgressPicture;

/**
 * What is known in which key, what is next and why.
 *
 * @param time for which it is worked out
 * @param lesson the title of the lesson that follows, empty if none is known
 */
public record ProgressAnswer(Knowledge knowledge, long time, String lesson) implements Answer {
    private static final double DAY = 24 * 60 * 60 * 1000.0;

    @Override
    public StyledText text(Look look) {
        if (knowledge.standings().isEmpty()) {
            String first = "Nothing has been asked yet. Enter begins a lesson; practise takes any skill.";
            return StyledText.of(first).wrapped(look.width());
        }
        StyledText known = look.plain() || look.width() < ProgressPicture.COLUMNS
                ? facts().in(look.signs()).wrapped(look.width())
                : new ProgressPicture(knowledge, time, look.signs()).text();
        return known.plus(next().in(look.signs()).wrapped(look.width()));
    }

    /** One fact a line. */
    private StyledText facts() {
        StyledText.Builder text = StyledText.builder();
        knowledge.standings().forEach((item, standing) -> text.line(name(item) + ": " + fact(item, standing) + "."));
        return text.build();
    }

    private String fact(Item item, Standing standing) {
        String pace = standing.pace().answers() == 0
                ? ""
                : String.format(Locale.ROOT, ", %.0f s", standing.pace().millis() / 1000);
        String slow = standing.isSlow(knowledge.pace(item.skill())) ? ", slower than in other keys" : "";
        return ProgressPicture.Level.of(standing) + ", " + count(standing) + pace + slow
                + (standing.isDue(time) ? ", due" : "");
    }

    private StyledText next() {
        Due due = Due.at(time, knowledge);
        StyledText said = StyledText.of(due.items().isEmpty() ? later() : now(due));
        return lesson.isEmpty()
                ? said
                : said.plus(StyledText.of("The lesson that follows is " + lesson + ": learn.", Style.QUIET));
    }

    private String now(Due due) {
        Item weakest = due.items().get(0);
        Standing standing = knowledge.of(weakest).orElseThrow();
        int things = due.items().size();
        return "Next: review. " + (things == 1 ? "One thing is" : things + " things are") + " due, some "
                + (due.seconds() + 59) / 60 + " min; the weakest is " + name(weakest) + ", " + count(standing)
                + ", asked " + ago(standing) + ".";
    }

    private String later() {
        Map.Entry<Item, Standing> first = knowledge.standings().entrySet().stream()
                .min(Map.Entry.comparingByValue((one, other) -> Long.compare(one.due(), other.due())))
                .orElseThrow();
        long days = Math.max(1, Math.round((first.getValue().due() - time) / DAY));
        return "Nothing is due. First to come back is " + name(first.getKey()) + ", "
                + (days == 1 ? "within a day" : "in " + days + " days") + "; until then, something new.";
    }

    private static String count(Standing standing) {
        return standing.right() + " of " + standing.asked() + " right alone";
    }

    private String ago(Standing standing) {
        long days = Math.round((time - standing.last()) / DAY);
        return days <= 0 ? "today" : days == 1 ? "a day ago" : days + " days ago";
    }

    private static String name(Item item) {
        try {
            return item.skill() + " in " + Key.parse(item.key()).write(Signs.MUSIC);
        } catch (Unreadable ofAnotherVersion) {
            return item.skill() + " in " + item.key();
        }
    }

    @Override
    public void json(Json json) {
        new ProgressTable(knowledge, time).json(json);
        json.put("due", (long) Due.at(time, knowledge).items().size()).put("lesson", lesson);
    }
}
