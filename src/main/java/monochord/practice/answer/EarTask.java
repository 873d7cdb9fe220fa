package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;

/**
 * How one kind of answer about something heard is read, compared and put into words.
 *
 * @param <A> the kind of answer, as music
 */
public interface EarTask<A> {
    /** @throws Unreadable if the text is not an answer of this kind */
    A read(String text);

    /** In ASCII, in its customary form. */
    String write(A answer);

    boolean same(A one, A other);

    /** Whether an answer that is not the expected one sounds exactly like it. */
    boolean soundsRight(A given);

    /** What is said to the expected answer. */
    Phrase yes();

    /** What is said to another name for the same sound. */
    Phrase otherName(A given);

    /** What was heard, what it was, and what the difference sounds like. */
    Phrase contrast(A given);

    /** How far off a wrong answer is. */
    Grade grade(A given);

    /** The wrong procedure that leads to this wrong answer, if one is known. */
    Optional<Misconception> misconception(A given);

    /** How to go on from a wrong answer: what of it is right, then where to listen; nothing where there is nothing better. */
    default List<Phrase> help(A given) {
        return List.of();
    }
}
