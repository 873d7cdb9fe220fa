package monochord.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.function.ToIntFunction;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;

/** A conversation through a pipe: no prompt, no colour, an answer for each line until the lines end. */
final class PipedConversation {
    private final Surroundings around;
    private final Sitting sitting;
    private final LineReading reading;
    private final ToIntFunction<Answer> say;
    private final JournalWriting noting;

    PipedConversation(Surroundings around, Sitting sitting, LineReading reading, ToIntFunction<Answer> say) {
        this.around = around;
        this.sitting = sitting;
        this.reading = reading;
        this.say = say;
        this.noting = new JournalWriting(sitting);
    }

    /** A line that could not be read was answered and is no failure of the conversation. */
    int run() {
        sitting.study().begin();
        sitting.cells().gather();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null && goesOn(); line = lines.readLine()) {
                Answer answer = reading.read(line);
                answer(answer);
                noting.note(line, answer).ifPresent(told -> around.err().println(told));
            }
            if (sitting.cells().isOpen()) {
                answer(sitting.cells().breakOff());
            }
            sitting.stage().ear().listenToTheEnd();
            return Answer.DONE;
        } catch (IOException unreadable) {
            around.err()
                    .println(Phrase.of(
                            "Standard input cannot be read: {0}",
                            Phrase.typed(String.valueOf(unreadable.getMessage()))));
            return Answer.FAILED;
        } finally {
            sitting.leave();
        }
    }

    /** Until quit, or until nobody reads the answers. */
    private boolean goesOn() {
        return !sitting.hasEnded() && !around.out().checkError();
    }

    /** A line that a cell goes on after has no answer yet. */
    private void answer(Answer answer) {
        if (!sitting.cells().isOpen()) {
            say.applyAsInt(answer);
            around.out().flush();
        }
    }
}
