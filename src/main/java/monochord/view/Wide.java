package monochord.view;

import monochord.text.StyledText;

/** Another answer set for reading from the back of a room: an empty line around each line. */
public record Wide(Answer answer) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder().gap();
        answer.text(look).lines().stream()
                .filter(line -> !line.isBlank())
                .forEach(line -> text.line(line).gap());
        return text.build();
    }

    @Override
    public void json(Json json) {
        answer.json(json);
    }

    @Override
    public int status() {
        return DONE;
    }
}
