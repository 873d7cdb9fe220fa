package monochord.view.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import monochord.practice.mastery.Due;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.mastery.SkillMastery;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
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
        StyledText.Builder text = StyledText.builder(look.reader());
        ProgressPicture picture = new ProgressPicture(knowledge, time, look.reader());
        if (knowledge.standings().isEmpty()) {
            text.line(Phrase.sentence("Nothing has been asked yet. Enter begins a lesson; practise takes any skill."));
        } else if (look.plain() || look.width() < picture.columns()) {
            text.lines(facts(look));
            next(text);
        } else {
            text.lines(picture.text());
            next(text);
        }
        return text.build().wrapped(look.width());
    }

    /** What is known, a line for each thing. */
    public StyledText facts(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        knowledge.standings().forEach((item, standing) -> text.line(fact(item, standing)));
        return text.build();
    }

    /** What is known of one thing, in one line. */
    private Phrase fact(SkillInKey item, SkillMastery standing) {
        List<Phrase> facts =
                new ArrayList<>(List.of(ProgressPicture.KnownLevel.of(standing).words(), count(standing)));
        if (standing.pace().answers() > 0) {
            facts.add(Phrase.of("{0} s", (int) Math.round(standing.pace().millis() / 1000)));
        }
        if (standing.isSlow(knowledge.pace(item.skill()))) {
            facts.add(Phrase.of("slower than in other keys"));
        }
        if (standing.isDue(time)) {
            facts.add(Phrase.of("due"));
        }
        return Phrase.of("{0}: {1}.", name(item), Phrase.joined(", ", facts));
    }

    private void next(StyledText.Builder text) {
        Due due = Due.at(time, knowledge);
        text.line(due.items().isEmpty() ? later() : now(due));
        if (!lesson.isEmpty()) {
            text.line(Phrase.sentence("The lesson that follows is {0}: learn.", Phrase.typed(lesson)), Style.QUIET);
        }
    }

    private Phrase now(Due due) {
        SkillInKey weakest = due.items().get(0);
        SkillMastery standing = knowledge.of(weakest).orElseThrow();
        return Phrase.sentence(
                "Next: review. {0}, some {1} min; the weakest is {2}, {3}, {4}.",
                things(due.items().size()), (due.seconds() + 59) / 60, name(weakest), count(standing), asked(standing));
    }

    private static Phrase things(int count) {
        return Phrase.counted(count, "One thing is due", "{0} things are due", count);
    }

    private Phrase later() {
        Map.Entry<SkillInKey, SkillMastery> first = knowledge.standings().entrySet().stream()
                .min(Map.Entry.comparingByValue((one, other) -> Long.compare(one.due(), other.due())))
                .orElseThrow();
        int days = (int) Math.max(1, Math.round((first.getValue().due() - time) / DAY));
        return Phrase.sentence(
                "Nothing is due. First to come back is {0}, {1}; until then, something new.",
                name(first.getKey()), Phrase.counted(days, "within a day", "in {0} days", days));
    }

    private static Phrase count(SkillMastery standing) {
        return Phrase.of("{0} of {1} right alone", standing.right(), standing.asked());
    }

    private Phrase asked(SkillMastery standing) {
        int days = (int) Math.max(0, Math.round((time - standing.last()) / DAY));
        return Phrase.counted(days, new Phrase.Forms("asked a day ago", "asked {0} days ago", "asked today"), days);
    }

    /** Such as: triad-spelling in D major. */
    public static Phrase name(SkillInKey item) {
        Phrase skill = Phrase.typed(item.skill());
        try {
            return Phrase.of("{0} in {1}", skill, Key.parse(item.key()));
        } catch (Unreadable ofAnotherVersion) {
            return Phrase.of("{0} in {1}", skill, Phrase.typed(item.key()));
        }
    }

    @Override
    public void json(Json json) {
        new ProgressTable(knowledge, time).json(json);
        json.put("due", (long) Due.at(time, knowledge).items().size()).put("lesson", lesson);
    }
}
