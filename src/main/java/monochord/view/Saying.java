package monochord.view;

import monochord.text.StyledText;

/** Something said in words, with nothing to compute. */
public record Saying(StyledText said, int status) implements Answer {
    public static Saying of(String text) {
        return new Saying(StyledText.of(text), DONE);
    }

    public static Saying of(StyledText text) {
        return new Saying(text, DONE);
    }

    public static Saying failed(String text) {
        return new Saying(StyledText.of(text), FAILED);
    }

    @Override
    public StyledText text(Look look) {
        return said.in(look.signs()).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        String kind = status == DONE ? "message" : "error";
        json.put("kind", kind).put(kind, said.plain());
    }
}
