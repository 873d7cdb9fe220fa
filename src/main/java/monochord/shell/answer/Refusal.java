package monochord.shell.answer;

import monochord.page.Style;
import monochord.page.StyledText;

/**
 * A line that could not be read.
 *
 * @param at the character at which it goes wrong, from 1; 0 if no one character is to blame
 * @param advice what would work, perhaps nothing
 */
public record Refusal(String message, int at, String advice) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder().line(message);
        if (!advice.isEmpty()) {
            text.line(advice, Style.QUIET);
        }
        return text.build().in(look.signs()).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("error", message).put("at", at);
    }

    @Override
    public int status() {
        return UNREADABLE;
    }
}
