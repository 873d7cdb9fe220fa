package monochord.cell.sandbox;

/** How much a cell may do, and how its JVM says that it was too much. */
public final class Limits {
    /** Threads of the cell's JVM, its own some ten included. */
    static final int THREADS = 300;
    /** Characters printed by one cell. */
    static final int PRINTED = 10_000;
    /** Characters of a value, and of a message. */
    static final int VALUE = 2_000;
    /** Things that one cell may play, and that it may show. */
    static final int PLAYED = 16;
    /** Elements of a list that are looked at to see whether it is music. */
    static final int ELEMENTS = 64;

    /** Exit status: the JVM ran out of memory ({@code -XX:+ExitOnOutOfMemoryError}). */
    public static final int OUT_OF_MEMORY = 3;
    /** Exit status: more than {@value #THREADS} threads. */
    public static final int TOO_MANY_THREADS = 79;

    private Limits() {}

    static String cut(String text) {
        return text.length() <= VALUE ? text : text.substring(0, VALUE) + "… (" + text.length() + " characters in all)";
    }
}
