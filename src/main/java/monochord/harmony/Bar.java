package monochord.harmony;

import java.util.List;

/**
 * A bar of a progression: one or more chords that divide it in equal shares.
 *
 * @param repeat whether it was written as a repeat of the bar before
 */
public record Bar(List<ChordEvent> slots, boolean repeat) {
    /** @throws IllegalArgumentException if there is no chord */
    public Bar {
        slots = List.copyOf(slots);
        if (slots.isEmpty()) {
            throw new IllegalArgumentException("a bar must hold a chord");
        }
    }

    /** All shares of the bar together. */
    public int shares() {
        return slots.stream().mapToInt(ChordEvent::shares).sum();
    }
}
