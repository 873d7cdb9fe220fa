package monochord.cell;

import java.util.List;
import monochord.text.Phrase;

/**
 * What went wrong in a cell, and where.
 *
 * @param message a line each
 * @param place index of the character in the cell's text, or −1 where there is none
 * @param line the line of it, from 1, or 0 where it does not matter
 */
public record CellFailure(FailureKind kind, List<Phrase> message, int place, int line) {
    /** In what way it went wrong. */
    public enum FailureKind {
        /** It cannot be read as Java. */
        NOT_JAVA,
        /** It was Java, and failed while it ran. */
        THROWN,
        /** Somebody stopped it. */
        STOPPED,
        /** It went beyond a bound, or what runs it failed. */
        BROKEN
    }

    public CellFailure {
        message = List.copyOf(message);
    }

    static CellFailure of(FailureKind kind, Phrase message) {
        return new CellFailure(kind, List.of(message), -1, 0);
    }

    CellFailure goingOn(Phrase news) {
        return of(kind, Phrase.row(message).then(news));
    }
}
