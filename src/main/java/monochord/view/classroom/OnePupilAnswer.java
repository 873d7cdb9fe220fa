package monochord.view.classroom;

import java.util.List;
import monochord.classroom.overview.ClassOverview;
import monochord.practice.mastery.Knowledge;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.ProgressPicture;
import monochord.view.Table;
import monochord.view.course.ProgressAnswer;

/**
 * One pupil of a class: mistakes, and what is known in which key, as a learner sees it of oneself.
 *
 * @param overview of this pupil alone
 * @param time for which it is worked out
 */
public record OnePupilAnswer(String code, ClassOverview overview, Knowledge knowledge, long time) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        if (overview.pupils().isEmpty()) {
            return text.line(Phrase.sentence("Nothing of {0} is on record.", Phrase.typed(code)))
                    .build()
                    .wrapped(look.width());
        }
        text.line(Phrase.sentence(
                "{0}: {1}, {2} right at the first try. Times and tries are as told by the pupil's file.",
                Phrase.typed(code),
                Phrase.counted(overview.asked(), "{0} answer", "{0} answers", overview.asked()),
                overview.right()));
        if (!overview.mistakes().isEmpty()) {
            Table table = Table.of(Table.Column.right(Phrase.NOTHING), Table.Column.left());
            overview.mistakesOfAllSkills()
                    .forEach(one -> table.row(
                            Phrase.of("{0}", one.count()), one.misconception().words()));
            text.gap()
                    .line(Phrase.of("Mistakes, the commonest first"), Style.HEADING)
                    .lines(table.text(look));
        }
        text.gap();
        ProgressPicture picture = new ProgressPicture(knowledge, time, look.reader());
        if (look.plain() || look.width() < picture.columns()) {
            text.lines(new ProgressAnswer(knowledge, time, "").facts(look));
        } else {
            text.lines(picture.text());
        }
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        new ClassOverviewAnswer(overview, Phrase.NOTHING, List.of()).json(json);
    }
}
