package monochord.cell;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * Runs nothing, and says so.
 *
 * @param why what its reports say
 * @param asked is told each text that was to run
 */
record NoCell(Phrase why, Consumer<String> asked) implements Cell {
    static final NoCell HERE = new NoCell(Phrase.of("No Java is run here."), text -> {});

    @Override
    public void ready() {
        // it is as ready as it gets
    }

    @Override
    public Extent extent(String text) {
        return Extent.WHOLE;
    }

    @Override
    public CellReport run(String text, Key key) {
        asked.accept(text);
        return CellReport.notRun(why);
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
