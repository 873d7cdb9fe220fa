package monochord.shell.sentence;

import monochord.shell.sitting.Sitting;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** One verb of the line. */
public interface Verb {
    /** What a sentence with it begins with. */
    String word();

    /** How it is used; asked for only when a sentence begins with it. */
    Usage usage();

    /** Whether all that stands behind it is one text, in which neither small words nor options mean anything. */
    default boolean readsWhole() {
        return false;
    }

    /** @throws Unreadable if the sentence cannot be read; its place counts from the sentence's start */
    Answer run(Sentence sentence, Sitting sitting);

    /** Whether note names may stand in its sentences, by the names the learner goes by. */
    default boolean readsMusic() {
        return true;
    }

    /** Whether the word at a place of its sentence is no note name, though in another country it could be one. */
    default boolean isNoName(String text, int place) {
        return false;
    }

    /** Whether it leaves what is being asked at the first start as it is. */
    default boolean isAside() {
        return false;
    }

    /** Whether {@code $name} in its sentence stands for a variable of the cell; not where a person's own words follow. */
    default boolean takesVariables() {
        return true;
    }
}
