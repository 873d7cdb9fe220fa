package monochord.text;

import java.io.IOException;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Reading or writing that failed, with what is wrong as a phrase; its message is the same in English. */
public final class Failure extends IOException {
    private static final long serialVersionUID = 1;

    /** Makes the phrase, with another name for each file in it. */
    private final transient Function<UnaryOperator<String>, Phrase> telling;

    private Failure(Function<UnaryOperator<String>, Phrase> telling, Throwable cause) {
        super(cause);
        this.telling = telling;
    }

    /** @param reason a clause: {@code is a folder, not a file} */
    public Failure(Phrase reason) {
        this(reason, null);
    }

    public Failure(Phrase reason, Throwable cause) {
        this(naming -> reason, cause);
    }

    /** With the name of the file in front. */
    public Failure(String file, Phrase reason) {
        this(file, reason, null);
    }

    public Failure(String file, Phrase reason, Throwable cause) {
        this(naming -> Phrase.of("{0}: {1}", Phrase.typed(naming.apply(file)), reason), cause);
    }

    /** A file that cannot be written because its folder is not there. */
    public static Failure noFolder(String file, String folder) {
        return new Failure(
                naming -> Phrase.of(
                        "{0}: there is no folder {1}",
                        Phrase.typed(naming.apply(file)), Phrase.typed(naming.apply(folder))),
                null);
    }

    /** What is wrong. What the JDK throws says it in its own words. */
    public static Phrase told(IOException failed) {
        return told(failed, UnaryOperator.identity());
    }

    /** The same with another name for whatever file it is. */
    public static Phrase told(IOException failed, UnaryOperator<String> naming) {
        return failed instanceof Failure ours
                ? ours.telling.apply(naming)
                : Phrase.typed(naming.apply(String.valueOf(failed.getMessage())));
    }

    @Override
    public String getMessage() {
        return told(this).toString();
    }
}
