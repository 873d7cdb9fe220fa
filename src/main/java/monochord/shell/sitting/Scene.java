package monochord.shell.sitting;

import java.util.Optional;
import monochord.practice.Question;
import monochord.theory.Key;

/**
 * Where a sitting stands while the line waits.
 *
 * @param key in which everything is read that names no other
 * @param question the one that is open
 */
public record Scene(Key key, Optional<Question> question) {}
