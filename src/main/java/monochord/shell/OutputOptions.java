package monochord.shell;

import java.util.Optional;
import java.util.function.UnaryOperator;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Look;
import monochord.view.WrappedAnswer;

/**
 * The options at the end of a line that change only how its answer looks: {@code --plain} and {@code --ascii}.
 *
 * @param line what stands before them
 */
record OutputOptions(String line, UnaryOperator<Look> wish) {
    private static final UnaryOperator<Look> NONE = UnaryOperator.identity();
    private static final String PLAIN = " --plain";
    private static final String ASCII = " --ascii";

    static OutputOptions of(String line) {
        return new OutputOptions(line, NONE).cut();
    }

    private OutputOptions cut() {
        String before = line.stripTrailing();
        if (before.endsWith(PLAIN)) {
            return without(before, PLAIN, look -> wish.apply(look).asPlain()).cut();
        }
        return before.endsWith(ASCII)
                ? without(before, ASCII, look -> wish.apply(look).inAscii()).cut()
                : this;
    }

    private static OutputOptions without(String line, String option, UnaryOperator<Look> wish) {
        return new OutputOptions(line.substring(0, line.length() - option.length()), wish);
    }

    Answer of(Answer answer) {
        return wish == NONE ? answer : new InItsManner(answer, wish);
    }

    private record InItsManner(Answer answer, UnaryOperator<Look> wish) implements WrappedAnswer {
        @Override
        public StyledText text(Look look) {
            return answer.text(wish.apply(look));
        }

        @Override
        public Optional<Answer> noted() {
            return answer.noted().map(kept -> new InItsManner(kept, wish));
        }
    }
}
