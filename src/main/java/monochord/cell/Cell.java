package monochord.cell;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.text.Phrase;
import monochord.theory.Key;

/** Where Java is run, away from the line. Whatever a cell does, every call comes back. */
public interface Cell extends AutoCloseable {
    /** How far a text goes. */
    enum Extent {
        /** It can be run. */
        WHOLE,
        /** It goes on. */
        PART,
        /** It can never become Java. */
        NOT_JAVA
    }

    /**
     * What can stand at a place.
     *
     * @param from where it begins that is replaced
     */
    record Completions(int from, List<String> texts) {
        public Completions {
            texts = List.copyOf(texts);
        }

        static Completions none() {
            return new Completions(0, List.of());
        }
    }

    /** Gets ready, if it is not; takes up to a second. */
    void ready();

    Extent extent(String text);

    /** @param key what the cell knows as the key of the line */
    CellReport run(String text, Key key);

    /** What could stand at the cursor; nothing where the cell is not ready or does not answer at once. */
    Completions complete(String text, int cursor);

    /** Whether the cell has something of this name; asked for without waiting for anything. */
    boolean holds(String name);

    /** The names of its variables; asked for without waiting for anything. */
    List<String> variables();

    /** A variable as it would be typed behind a verb, or nothing where no verb could read it. */
    Optional<String> typed(String variable);

    /** Stops what runs; from another thread. */
    void stop();

    @Override
    void close();

    /** For settings without Java; there is one such cell. */
    static Cell none() {
        return NoCell.HERE;
    }

    /**
     * One that runs nothing.
     *
     * @param why what its reports say
     * @param asked is told each text that was to run
     */
    static Cell runningNothing(Phrase why, Consumer<String> asked) {
        return new NoCell(why, asked);
    }
}
