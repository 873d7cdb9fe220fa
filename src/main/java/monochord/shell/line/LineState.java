package monochord.shell.line;

import java.util.Optional;
import monochord.practice.Question;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;

/**
 * Where a sitting stands while the line waits.
 *
 * @param key in which everything is read that names no other
 * @param naming by what names the learner calls notes
 * @param question the one that is open, if the next line answers it
 */
public record LineState(Key key, NoteNaming naming, Optional<Question> question) {}
