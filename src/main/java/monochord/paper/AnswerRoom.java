package monochord.paper;

/** Where an answer is written by hand. */
public enum AnswerRoom {
    /** One ruled line. */
    LINE,
    /** Two ruled lines. */
    LINES,
    /** An empty staff in the treble clef. */
    STAFF,
    /** Two empty staves for two hands. */
    HANDS,
    /** An empty keyboard, whose keys are marked. */
    KEYBOARD
}
