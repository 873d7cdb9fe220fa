package monochord.view;

import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Unreadable;

/**
 * A line that could not be read.
 *
 * @param at the character at which it goes wrong, from 1; 0 if no one character is to blame
 * @param advice what would work, perhaps nothing
 */
public record Refusal(Phrase message, int at, Phrase advice) implements Answer {
    /** A refusal that says all there is to say. */
    public Refusal(Phrase message, int at) {
        this(message, at, Phrase.NOTHING);
    }

    public static Refusal of(Unreadable unreadable, Phrase advice) {
        return new Refusal(Phrase.refusal(unreadable), unreadable.place() + 1, advice);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader()).line(message);
        if (!advice.isEmpty()) {
            text.line(advice, Style.QUIET);
        }
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "error").put("error", message.toString()).put("at", at);
    }

    @Override
    public int status() {
        return UNREADABLE;
    }
}
