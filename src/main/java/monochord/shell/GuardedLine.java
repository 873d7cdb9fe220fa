package monochord.shell;

import java.util.function.Function;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Refusal;
import monochord.view.Statement;

/**
 * Whatever a line holds and whatever goes wrong over it, an answer comes back and the sitting goes on: a line may not be
 * too long, and one that cannot be read, meets a fault of ours or wants more memory than there is is told so.
 */
final class GuardedLine {
    static final int LONGEST_LINE = 10_000;

    private GuardedLine() {}

    /** The answer to a line without the options that say how it is shown. */
    static Answer answer(String line, Function<String, Answer> answer) {
        if (line.length() > LONGEST_LINE) {
            Phrase message =
                    Phrase.of("This line has {0} characters; at most {1} are read.", line.length(), LONGEST_LINE);
            return new Refusal(message, LONGEST_LINE + 1);
        }
        try {
            OutputOptions manner = OutputOptions.of(line);
            return manner.of(answer.apply(manner.line()));
        } catch (Unreadable unreadable) {
            return Refusal.of(unreadable, Phrase.NOTHING);
        } catch (RuntimeException fault) {
            return ourFault(fault);
        } catch (LinkageError damage) {
            return Statement.failed(Phrase.typed(Main.toldAs(damage)));
        } catch (OutOfMemoryError | StackOverflowError tooMuch) {
            return Statement.failed(Phrase.sentence(
                    "This is more than can be worked out at once, and was given up. Nothing is lost; try less of it."));
        } catch (AssertionError fault) {
            return ourFault(fault);
        }
    }

    private static Answer ourFault(Throwable fault) {
        return Statement.failed(Phrase.of(
                "This line met a fault of ours: {0}. Nothing is lost; go on, and please report it.",
                Phrase.typed(fault.toString())));
    }
}
