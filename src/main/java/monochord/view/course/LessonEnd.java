package monochord.view.course;

import monochord.lesson.Lesson;
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
        String count = asked == 0 ? "" : " " + atOnce + " of " + asked + " answers right at the first try.";
        String after = next.isEmpty()
                ? "That was the last lesson there is."
                : "Next: " + next + ". Enter begins it; another day is as good.";
        return StyledText.builder()
                .line("End of " + lesson.title() + "." + count)
                .line(after, Style.QUIET)
                .build()
                .in(look.signs())
                .wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "end").put("asked", asked).put("atOnce", atOnce).put("next", next);
    }
}
