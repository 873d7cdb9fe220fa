package monochord.view;

import java.util.Optional;
import monochord.text.StyledText;

/** Something said about the notebook itself, which is no part of it. */
public record NotebookRemark(Answer answer) implements Answer {
    @Override
    public StyledText text(Look look) {
        return answer.text(look);
    }

    @Override
    public void json(Json json) {
        answer.json(json);
    }

    @Override
    public int status() {
        return answer.status();
    }

    @Override
    public Optional<Answer> noted() {
        return Optional.empty();
    }
}
