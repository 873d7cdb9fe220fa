package monochord.view.course;

import java.util.List;
import monochord.practice.Question;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

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
        return StyledText.builder()
                .line(count())
                .line(again(), Style.QUIET)
                .build()
                .in(look.signs())
                .wrapped(look.width());
    }

    private String count() {
        if (asked == 0) {
            return "Nothing answered this time.";
        }
        String questions = asked == 1 ? "One question" : capital(Words.number(asked)) + " questions";
        String back = second == 0
                ? "."
                : ", " + Words.number(second) + " when " + (second == 1 ? "it" : "they") + " came back.";
        return questions + ", " + (atOnce == 0 ? "none" : Words.number(atOnce)) + " right at the first try" + back;
    }

    private String again() {
        List<String> names = missed.stream().map(DrillEnd::name).distinct().toList();
        if (names.isEmpty()) {
            return "Nothing to go over; progress shows where you stand.";
        }
        return "To go over: "
                + (names.size() <= NAMED
                        ? Words.listed(names)
                        : String.join(", ", names.subList(0, NAMED)) + " and more")
                + ".";
    }

    private static String name(Question question) {
        return question.skillId() + " in " + question.key().tonic().write(Signs.MUSIC)
                + (question.key().isMinor() ? " minor" : "");
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "end").put("asked", asked).put("atOnce", atOnce).put("second", second);
    }
}
