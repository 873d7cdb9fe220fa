package monochord.view;

import java.util.List;
import java.util.function.Consumer;
import monochord.text.StyledText;
import monochord.view.keyboard.Drawing;

/** An answer around another one, which says all that it does not say itself. */
public interface WrappedAnswer extends Answer {
    Answer answer();

    @Override
    default StyledText text(Look look) {
        return answer().text(look);
    }

    @Override
    default List<Drawing> drawings() {
        return answer().drawings();
    }

    @Override
    default void json(Json json) {
        answer().json(json);
    }

    @Override
    default void jsonLines(Consumer<Json> lines) {
        answer().jsonLines(lines);
    }

    @Override
    default int status() {
        return answer().status();
    }
}
