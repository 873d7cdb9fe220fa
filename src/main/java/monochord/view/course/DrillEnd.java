package monochord.view.course;

import java.util.List;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What is said at the end of a run of questions, in two lines.
 *
 * @param asked how many questions were answered
 * @param atOnce how many of them were right at the first try without help
 * @param second how many more were right when they came back
 * @param missed those that have not been right in either way
 */
public record DrillEnd(int asked, int atOnce, int second, List<Question> missed) implements Answer {
    /** So many go into a line. */
    private static final int NAMED = 2;

    public DrillEnd {
        missed = List.copyOf(missed);
    }

    @Override
    public StyledText text(Look look) {
        return StyledText.builder(look.reader())
                .line(count())
                .line(again(), Style.QUIET)
                .build()
                .wrapped(look.width());
    }

    private Phrase count() {
        if (asked == 0) {
            return Phrase.sentence("Nothing answered this time.");
        }
        return second == 0
                ? Phrase.sentence("{0}, {1} right at the first try.", questions(), some(atOnce))
                : Phrase.sentence("{0}, {1} right at the first try, {2}", questions(), some(atOnce), cameBack());
    }

    private Phrase questions() {
        return Phrase.counted(asked, "{0} question", "{0} questions", Phrase.number(asked));
    }

    private static Phrase some(int count) {
        return count == 0 ? Phrase.of("none") : Phrase.number(count);
    }

    private Phrase cameBack() {
        return Phrase.counted(second, "{0} when it came back.", "{0} when they came back.", Phrase.number(second));
    }

    private Phrase again() {
        List<Phrase> names = missed.stream().map(DrillEnd::name).distinct().toList();
        if (names.isEmpty()) {
            return Phrase.sentence("Nothing to go over; progress shows where you stand.");
        }
        return names.size() <= NAMED
                ? Phrase.sentence("To go over: {0}.", Phrase.list(names))
                : Phrase.sentence("To go over: {0} and more.", Phrase.joined(", ", names.subList(0, NAMED)));
    }

    private static Phrase name(Question question) {
        Phrase skill = Phrase.typed(question.skillId());
        return question.key().isMinor()
                ? Phrase.of("{0} in {1}", skill, question.key())
                : Phrase.of("{0} in {1}", skill, question.key().tonic());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "end").put("asked", asked).put("atOnce", atOnce).put("second", second);
    }
}
