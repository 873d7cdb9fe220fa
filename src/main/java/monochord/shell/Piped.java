package monochord.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.function.ToIntFunction;
import monochord.shell.answer.Answer;
import monochord.shell.sitting.Sitting;

/** A conversation through a pipe: no prompt, no colour, an answer for each line until the lines end. */
final class Piped {
    private final Surroundings around;
    private final Sitting sitting;
    private final Reading reading;
    private final ToIntFunction<Answer> say;

    Piped(Surroundings around, Sitting sitting, Reading reading, ToIntFunction<Answer> say) {
        this.around = around;
        this.sitting = sitting;
        this.reading = reading;
        this.say = say;
    }

    /** A line that could not be read was answered and is no failure of the conversation. */
    int run() {
        sitting.study().begin();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null && !sitting.hasEnded(); line = lines.readLine()) {
                Answer answer = reading.read(line);
                say.applyAsInt(answer);
                sitting.journal()
                        .note(line, answer)
                        .ifPresent(told -> around.err().println(told));
                around.out().flush();
            }
            sitting.stage().ear().listenToTheEnd();
            return Answer.DONE;
        } catch (IOException unreadable) {
            around.err().println("Standard input cannot be read: " + unreadable.getMessage());
            return Answer.FAILED;
        } finally {
            sitting.leave();
        }
    }
}
