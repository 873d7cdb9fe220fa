package monochord.view;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.text.StyledText;
import monochord.view.keyboard.Drawing;

/** Several answers to one line, such as a verdict and the next question; as JSON, the first. */
public record Answers(List<Answer> parts) implements Answer {
    public static Answer of(Answer... parts) {
        return new Answers(List.of(parts));
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        boolean first = true;
        for (Answer part : parts) {
            StyledText said = part.text(look);
            if (!first && !said.isEmpty()) {
                text.gap();
            }
            first &= said.isEmpty();
            text.lines(said);
        }
        return text.build();
    }

    @Override
    public List<Drawing> drawings() {
        return parts.stream().flatMap(part -> part.drawings().stream()).toList();
    }

    @Override
    public void json(Json json) {
        parts.get(0).json(json);
    }

    @Override
    public void jsonLines(Consumer<Json> lines) {
        parts.get(0).jsonLines(lines);
    }

    @Override
    public int status() {
        return parts.get(0).status();
    }

    @Override
    public Optional<Answer> noted() {
        List<Answer> kept =
                parts.stream().map(Answer::noted).flatMap(Optional::stream).toList();
        return kept.isEmpty() && !parts.isEmpty() ? Optional.empty() : Optional.of(new Answers(kept));
    }
}
