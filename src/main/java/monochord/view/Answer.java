package monochord.view;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.text.StyledText;
import monochord.view.keyboard.Drawing;

/** What a verb answers: a value that each way out renders for itself. */
public interface Answer {
    /** Exit status of a command line that was carried out. */
    int DONE = 0;
    /** It was carried out and the answer is no: a wrong answer, a lesson with faults. */
    int NO = 1;
    /** The sentence could not be read. */
    int UNREADABLE = 2;
    /** Something outside failed: a file, a device. */
    int FAILED = 3;

    /** Lines no wider than the look allows. */
    StyledText text(Look look);

    /** The pictures of the keyboard that belong to it, for looks that show them apart. */
    default List<Drawing> drawings() {
        return List.of();
    }

    /** Adds the fields that the command line promises. */
    void json(Json json);

    /** The objects for a program, one a line; mostly one. */
    default void jsonLines(Consumer<Json> lines) {
        Json object = new Json();
        json(object);
        lines.accept(object);
    }

    default int status() {
        return DONE;
    }

    /** This answer as a notebook keeps it, without what hangs on the machine or the day; nothing for a word said aside. */
    default Optional<Answer> noted() {
        return Optional.of(this);
    }
}
