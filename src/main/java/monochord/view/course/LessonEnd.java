package monochord.view.course;

import monochord.lesson.Lesson;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What is said when a lesson is over.
 *
 * @param asked how many questions it put
 * @param atOnce how many of them were right at the first try without help
 * @param next the title of the lesson after it, with its number, or nothing
 */
public record LessonEnd(Lesson lesson, int asked, int atOnce, String next) implements Answer {
    @Override
    public StyledText text(Look look) {
        return StyledText.builder(look.reader())
                .line(Phrase.sentence("End of {0}.", Phrase.typed(lesson.title()))
                        .then(count()))
                .line(after(), Style.QUIET)
                .build()
                .wrapped(look.width());
    }

    private Phrase count() {
        return asked == 0
                ? Phrase.NOTHING
                : Phrase.sentence("{0} of {1} answers right at the first try.", atOnce, asked);
    }

    private Phrase after() {
        return next.isEmpty()
                ? Phrase.sentence("That was the last lesson there is.")
                : Phrase.sentence("Next: {0}. Enter begins it; another day is as good.", Phrase.typed(next));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "end").put("asked", asked).put("atOnce", atOnce).put("next", next);
    }
}
