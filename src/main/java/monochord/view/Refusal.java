package monochord.view;

import monochord.text.Style;
import monochord.text.StyledText;
import monochord.text.naming.InProse;
import monochord.theory.NoteNaming;

/**
 * A line that could not be read.
 *
 * @param at the character at which it goes wrong, from 1; 0 if no one character is to blame
 * @param advice what would work, perhaps nothing
 */
public record Refusal(String message, int at, String advice) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText said = quoting(message, Style.PLAIN, look);
        return advice.isEmpty()
                ? said.wrapped(look.width())
                : said.plus(quoting(advice, Style.QUIET, look)).wrapped(look.width());
    }

    /** What stands in quotation marks is what was typed, and stays. */
    public static StyledText quoting(String message, Style style, Look look) {
        boolean english = look.signs().naming() == NoteNaming.ENGLISH;
        return StyledText.of(english ? message : InProse.around(message, look.signs()), style)
                .in(look.signs().with(NoteNaming.ENGLISH));
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
