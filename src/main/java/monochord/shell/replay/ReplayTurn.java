package monochord.shell.replay;

import java.util.Optional;
import monochord.notebook.Exchange;
import monochord.sound.Performance;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;

/**
 * One exchange of a notebook, typed again.
 *
 * @param written as the notebook has it
 * @param answer what is answered now
 * @param text that answer as a notebook holds it
 * @param naming by what names notes go in it
 * @param heard what sounded, if something did
 * @param isSkipped whether it is code of somebody's that nobody has said yes to, and was not run
 */
public record ReplayTurn(
        Exchange written,
        Answer answer,
        String text,
        NoteNaming naming,
        Optional<Performance> heard,
        boolean isSkipped) {
    public boolean differs() {
        return !isSkipped && !text.equals(Exchange.settled(written.answer()));
    }

    /** The exchange as it went now; as it is written where it was not run. */
    Exchange played() {
        return isSkipped ? written : written.answered(text);
    }
}
