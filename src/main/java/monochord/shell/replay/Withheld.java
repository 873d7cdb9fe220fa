package monochord.shell.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.shell.answer.Saying;
import monochord.shell.cell.Cell;
import monochord.shell.cell.Outcome;
import monochord.theory.Key;

/** Keeps back what somebody else's file would have run, and remembers it. */
final class Withheld implements Cell {
    private final List<String> kept = new ArrayList<>();

    /** How many times something was to be run. */
    int count() {
        return kept.size();
    }

    @Override
    public void ready() {
        // nothing will run
    }

    @Override
    public Extent extent(String text) {
        return Extent.WHOLE;
    }

    @Override
    public Outcome run(String text, Key key) {
        kept.add(text);
        return new Outcome(Saying.failed("This is somebody else's Java; it was not run."), List.of(), null);
    }

    @Override
    public Completions complete(String text, int cursor) {
        return new Completions(0, List.of());
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
