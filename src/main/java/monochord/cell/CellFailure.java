package monochord.cell;

/**
 * What went wrong in a cell, and where.
 *
 * @param place index of the character in the cell's text, or −1 where there is none
 * @param line the line of it, from 1, or 0 where it does not matter
 */
public record CellFailure(Kind kind, String message, int place, int line) {
    /** In what way it went wrong. */
    public enum Kind {
        /** It cannot be read as Java. */
        NOT_JAVA,
        /** It was Java, and failed while it ran. */
        THROWN,
        /** Somebody stopped it. */
        STOPPED,
        /** It went beyond a bound, or what runs it failed. */
        BROKEN
    }

    static CellFailure of(Kind kind, String message) {
        return new CellFailure(kind, message, -1, 0);
    }

    CellFailure goingOn(String news) {
        return new CellFailure(kind, message + " " + news, -1, 0);
    }
}
