package monochord.score;

/** Which hand plays. */
public enum Hand {
    LEFT,
    RIGHT,
    /** Nobody said; one line alone is nearly always for the right. */
    EITHER,
    /** Neither: the tune that is sung or played above both, or alone. */
    TUNE
}
