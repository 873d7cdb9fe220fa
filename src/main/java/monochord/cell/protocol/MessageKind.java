package monochord.cell.protocol;

/** What a message is about, and the texts it carries. */
public enum MessageKind {
    /** To the cell: run {@code text}; the line is in {@code key}; {@code again} if it ran before and is to keep still. */
    RUN,
    /** To the cell: how far does {@code text} go? */
    MEASURE,
    /** To the cell: what could stand in {@code text} at {@code cursor}? */
    COMPLETE,
    /** To the cell: how would a verb read the variable {@code name}? */
    LOOK_UP,

    /** To the cell: stop what runs. */
    STOP,

    /** From the cell: it can be talked to. */
    READY,
    /** From the cell: {@code text} was printed. */
    PRINTED,
    /** From the cell: a value came out: {@code name} or nothing, {@code type}, then a {@link EncodedValue}. */
    VALUE,
    /** From the cell: show this, a {@link EncodedValue}. */
    SHOW,
    /** From the cell: play this at {@code tempo} or as usual, then a {@link EncodedValue}. */
    PLAY,
    /** From the cell: {@code text} is to be known. */
    NOTICE,
    /** From the cell: it went wrong: {@code message}, {@code place} in the text from 0, or −1; {@code cause}. */
    TROUBLE,
    /** From the cell: the JVM is about to end because the cell asked for it. */
    LEAVES,
    /** From the cell: a run is over; {@code good} or not, how many characters were not printed, then all names. */
    DONE,
    /** From the cell: how far the text goes. */
    MEASURED,
    /** From the cell: where the completed part begins, then what could stand there. */
    COMPLETED,
    /** From the cell: the text of a variable, and whether a verb could read it. */
    LOOKED_UP;

    /** Stands once more before the name of a variable, behind all names. */
    public static final String VARIABLE = "$";
}
