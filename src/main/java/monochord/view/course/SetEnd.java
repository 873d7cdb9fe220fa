package monochord.view.course;

import java.util.List;
import monochord.practice.drill.SetReport;
import monochord.practice.drill.Tally;
import monochord.practice.mastery.SkillInKey;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** What is said at the end of a day's set: how it went, what is better than last time, what tomorrow brings. */
public record SetEnd(SetReport report) implements Answer {
    /** So many go into a line. */
    private static final int NAMED = 3;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader()).line(count());
        if (report.today().asked() > 0) {
            text.line(better());
        }
        return text.line(tomorrow(), Style.QUIET).build().wrapped(look.width());
    }

    private Phrase count() {
        Tally today = report.today();
        if (today.asked() == 0) {
            return Phrase.sentence("Nothing answered this time.");
        }
        Phrase questions = Phrase.counted(today.asked(), "{0} question", "{0} questions", Phrase.number(today.asked()));
        Tally last = report.last();
        return last.asked() == 0
                ? Phrase.sentence("{0}, {1} right at the first try.", questions, some(today.right()))
                : Phrase.sentence(
                        "{0}, {1} right at the first try; last time {2} of {3}.",
                        questions, some(today.right()), some(last.right()), Phrase.number(last.asked()));
    }

    private static Phrase some(int count) {
        return count == 0 ? Phrase.of("none") : Phrase.number(count);
    }

    private Phrase better() {
        List<Phrase> firmer =
                report.firmer().stream().limit(NAMED).map(SetEnd::name).toList();
        if (!firmer.isEmpty()) {
            return Phrase.sentence("Firmer than last time: {0}.", Phrase.list(firmer));
        }
        return report.today().right() > 0
                ? Phrase.sentence("What was right today is asked again just before it would fade.")
                : Phrase.sentence("Nothing is firmer yet; what was missed comes back tomorrow.");
    }

    private static Phrase name(SkillInKey item) {
        Key key = Key.parse(item.key());
        Phrase skill = Phrase.typed(item.skill());
        return key.isMinor() ? Phrase.of("{0} in {1}", skill, key) : Phrase.of("{0} in {1}", skill, key.tonic());
    }

    private Phrase tomorrow() {
        SetReport.Tomorrow next = report.tomorrow();
        Phrase back = Phrase.counted(
                next.due(),
                "Tomorrow one thing comes back",
                "Tomorrow {0} things come back, some {1} min",
                Phrase.number(next.due()),
                next.minutes());
        Phrase fresh = next.fresh()
                .map(turn -> Phrase.of(
                        "{0} in {1}",
                        Phrase.typed(turn.skill().id()), turn.key().tonic()))
                .orElse(Phrase.NOTHING);
        if (next.due() == 0) {
            return fresh.isEmpty()
                    ? Phrase.sentence("Nothing is due tomorrow; practise goes over what is weakest.")
                    : Phrase.sentence("Nothing is due tomorrow; new will be {0}.", fresh);
        }
        return fresh.isEmpty()
                ? Phrase.sentence("{0}.", back)
                : Phrase.sentence("{0}, and new will be {1}.", back, fresh);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "end")
                .put("asked", report.today().asked())
                .put("atOnce", report.today().right())
                .put("due", report.tomorrow().due());
    }
}
