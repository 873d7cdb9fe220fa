package monochord.view;

import java.util.Optional;
import java.util.function.Consumer;

/**
 * What a class looks at: a wrong answer in it is no failure of a command line.
 *
 * @param nameless the same without anybody's name, as a notebook keeps it
 */
public record ClassAnswer(Answer answer, Answer nameless) implements WrappedAnswer {
    /** Something with nobody's name in it. */
    public ClassAnswer(Answer answer) {
        this(answer, answer);
    }

    @Override
    public void json(Json json) {
        nameless.json(json);
    }

    @Override
    public void jsonLines(Consumer<Json> lines) {
        nameless.jsonLines(lines);
    }

    @Override
    public int status() {
        return DONE;
    }

    @Override
    public Optional<Answer> noted() {
        return nameless.noted();
    }
}
