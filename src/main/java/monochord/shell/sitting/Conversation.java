package monochord.shell.sitting;

import monochord.view.Answer;

/** What understands lines, in whatever sitting they are typed. */
@FunctionalInterface
public interface Conversation {
    Answer read(String line, Sitting sitting);
}
