package monochord.shell.cell;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Refusal;

/**
 * Runs nothing, and says so.
 *
 * @param told what is said of a text that was to run
 */
record NoCell(Function<String, Answer> told) implements Cell {
    static final NoCell HERE = new NoCell(text -> new Refusal(Phrase.of("No Java is run here."), 1));

    @Override
    public void ready() {
        // it is as ready as it gets
    }

    @Override
    public Extent extent(String text) {
        return Extent.WHOLE;
    }

    @Override
    public Outcome run(String text, Key key) {
        return Outcome.of(told.apply(text));
    }

    @Override
    public Completions complete(String text, int cursor) {
        return Completions.none();
    }

    @Override
    public boolean holds(String name) {
        return false;
    }

    @Override
    public List<String> variables() {
        return List.of();
    }

    @Override
    public Optional<String> typed(String variable) {
        return Optional.empty();
    }

    @Override
    public void stop() {
        // nothing runs
    }

    @Override
    public void close() {
        // nothing is open
    }
}
