package monochord.shell.sitting;

import monochord.shell.answer.Answer;

/** What understands lines, in whatever sitting they are typed. */
@FunctionalInterface
public interface Conversation {
    Answer read(String line, Sitting sitting);
}
