package monochord.shell.answer;

import java.util.List;
import monochord.page.Style;
import monochord.page.StyledText;
import monochord.practice.Question;
import monochord.theory.Signs;

/**
 * What is said at the end of a run of questions, in two lines.
 *
 * @param asked how many questions were answered
 * @param missed those that were not right at the first try without help
 */
public record DrillEnd(int asked, List<Question> missed) implements Answer {
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
        String questions = asked == 1 ? "One question" : capital(Words.number(asked)) + " questions";
        int right = asked - missed.size();
        return questions + ", " + Words.number(right) + " right at the first try.";
    }

    private String again() {
        List<String> names = missed.stream().map(DrillEnd::name).distinct().toList();
        return names.isEmpty()
                ? "Nothing to go over. Another day it sits deeper than in one go; progress shows where you stand."
                : "To go over: " + Words.listed(names) + ". It comes back when it is due; tell shows a way again.";
    }

    private static String name(Question question) {
        return question.skillId() + " in " + question.key().write(Signs.MUSIC);
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "end").put("asked", asked).put("atOnce", asked - missed.size());
    }
}
