package monochord.cell.sandbox;

import monochord.cell.protocol.EncodedValue;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/** What the words of one run of a cell act on: the line's key, and the way back to the line. */
final class RunContext {
    private static volatile RunContext current = new RunContext(null, Key.major(NoteName.C), true);

    private final MessageSender post;
    private final Key key;
    private final boolean still;
    private int sent;

    /** @param still whether nothing is to be seen or heard, for the cell ran before */
    RunContext(MessageSender post, Key key, boolean still) {
        this.post = post;
        this.key = key;
        this.still = still;
    }

    static RunContext current() {
        return current;
    }

    /** From now on words act here. */
    static void open(RunContext scene) {
        current = scene;
    }

    /** From now on words have no effect. */
    static void close() {
        current = new RunContext(null, current.key, true);
    }

    Key key() {
        return key;
    }

    /** @throws IllegalStateException if this cell has sent as much as one may */
    synchronized void send(MessageKind kind, EncodedValue music, String... before) {
        if (still) {
            return;
        }
        if (++sent > Limits.PLAYED) {
            throw new IllegalStateException("one cell plays and shows at most " + Limits.PLAYED + " things");
        }
        post.send(music.message(kind, before));
    }

    void send(Message message) {
        if (!still) {
            post.send(message);
        }
    }
}
