package monochord.text;

/** What a piece of text means. The meaning is never carried by the style alone. */
public enum Style {
    PLAIN,
    STRONG,
    EMPHASIS,
    HEADING,
    /** What may be overlooked: rulers, unmarked keys, asides. */
    QUIET,
    /** What can be typed at the prompt: a verb, an example. */
    TYPED,
    /** Java, in which notes keep their English names. */
    JAVA,
    PROMPT,
    ROOT,
    THIRD,
    FIFTH,
    SEVENTH,
    /** Any other tone of a chord or scale: a ninth, a suspended fourth, a bass from outside. */
    OTHER_TONE,
    RIGHT,
    NEARLY,
    WRONG
}
