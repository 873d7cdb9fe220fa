package monochord.shell.keyboard;

import java.util.List;

/** What was played, once it is over. Keys are MIDI note numbers. */
sealed interface Gesture {
    List<Integer> keys();

    /** Keys that were down together and have been let go, bottom to top. */
    record KeysTogether(List<Integer> keys) implements Gesture {
        public KeysTogether {
            keys = List.copyOf(keys);
        }
    }

    /** Keys one after another, in the order in which they went down. */
    record KeysInTurn(List<Integer> keys) implements Gesture {
        public KeysInTurn {
            keys = List.copyOf(keys);
        }
    }
}
