package monochord.bench;

import java.util.List;

/** Hands out the things of a list in order, round and round: one a call. */
final class Turn<T> {
    private final List<T> things;
    private int next;

    Turn(List<T> things) {
        this.things = List.copyOf(things);
    }

    T next() {
        next = next + 1 < things.size() ? next + 1 : 0;
        return things.get(next);
    }
}
