package monochord.view;

import java.util.Optional;

/** Something said about the notebook itself, which is no part of it. */
public record NotebookRemark(Answer answer) implements WrappedAnswer {
    @Override
    public Optional<Answer> noted() {
        return Optional.empty();
    }
}
