package monochord.shell.verb;

import java.util.List;
import monochord.shell.answer.Answer;
import monochord.shell.sitting.Sitting;
import monochord.theory.Unreadable;

/** One verb of the line. */
public interface Verb {
    Usage usage();

    /** Whether all that stands behind it is one text, in which neither small words nor options mean anything. */
    default boolean readsWhole() {
        return false;
    }

    /** @throws Unreadable if the sentence cannot be read; its place counts from the sentence's start */
    Answer run(Sentence sentence, Sitting sitting);

    /** What can follow the verb, for completion. */
    default List<String> candidates(Sitting sitting) {
        return List.of();
    }
}
