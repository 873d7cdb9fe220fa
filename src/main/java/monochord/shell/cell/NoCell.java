package monochord.shell.cell;

import java.util.List;
import java.util.Optional;
import monochord.shell.answer.Refusal;
import monochord.theory.Key;

/** Runs nothing, and says so. */
record NoCell() implements Cell {
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
        return Outcome.of(new Refusal("No Java is run here.", 1, ""));
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
