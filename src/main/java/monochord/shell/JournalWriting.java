package monochord.shell;

import java.util.Optional;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;

/** Hands what is typed to the journal, the lines of a cell as one. */
final class JournalWriting {
    private final Sitting sitting;
    private String open = "";

    JournalWriting(Sitting sitting) {
        this.sitting = sitting;
    }

    /**
     * Notes a line and what was answered, or keeps it until the cell it belongs to is whole.
     *
     * @return what the person must be told, once
     */
    Optional<Phrase> note(String line, Answer answer) {
        String nameless =
                sitting.teaching().room().map(room -> room.nameless(line)).orElse(line);
        String text = open.isEmpty() ? nameless : open + "\n" + nameless;
        open = sitting.cells().isOpen() ? text : "";
        return open.isEmpty() ? sitting.journal().note(text, answer) : Optional.empty();
    }

    /** Forgets the lines of a cell that was left. */
    void leave() {
        open = "";
    }
}
