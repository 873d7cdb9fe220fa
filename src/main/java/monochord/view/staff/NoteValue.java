package monochord.view.staff;

/** How long a column lasts, and so how its heads look. */
public enum NoteValue {
    WHOLE("noteheadWhole", 6.4),
    HALF("noteheadHalf", 4.8),
    QUARTER("noteheadBlack", 3.2),
    /** No length is told: black heads without a stem. */
    FREE("noteheadBlack", 4);

    private final String head;
    private final double room;

    NoteValue(String head, double room) {
        this.head = head;
        this.room = room;
    }

    MusicSign head() {
        return MusicSign.named(head);
    }

    boolean hasStem() {
        return this == HALF || this == QUARTER;
    }

    /** How far the next column stands where nothing asks for more: 3.2 and 1.6 for each doubling of a quarter. */
    double room() {
        return room;
    }
}
