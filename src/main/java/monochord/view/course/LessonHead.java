package monochord.view.course;

import monochord.lesson.Lesson;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** The title of a lesson that begins. */
public record LessonHead(Lesson lesson, Key key) implements Answer {
    @Override
    public StyledText text(Look look) {
        String number = lesson.number().isEmpty() ? "" : lesson.number() + "  ";
        return StyledText.builder(look.reader())
                .add(Phrase.typed(number + lesson.title()), Style.HEADING)
                .add("  ")
                .add(Phrase.of("in {0}", key), Style.QUIET)
                .build()
                .wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "lesson")
                .put("number", lesson.number())
                .put("slug", lesson.slug())
                .put("title", lesson.title())
                .put("grade", lesson.grade())
                .put("key", key.toString());
    }
}
