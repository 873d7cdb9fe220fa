package monochord.lesson;

/**
 * A run of text in one style, on one line however the file breaks it.
 *
 * @param text may hold fills, see {@link Filling}
 */
public record TextRun(String text, RunStyle style) {
    /** How the run is set off from the text around it. */
    public enum RunStyle {
        PLAIN,
        EMPHASIS,
        STRONG,
        CODE
    }
}
