package monochord.shell.rehearsal;

import java.util.Optional;
import java.util.function.ObjLongConsumer;
import monochord.sound.keyboard.KeyEvent;

/** Hands on what is played at the connected keyboard, with its time, to whoever listens; thread-safe. */
public final class KeyFeed {
    private volatile String keyboard;
    private volatile ObjLongConsumer<KeyEvent> listener;

    /** @param name of the keyboard that is connected from now on, or null for none */
    public void connects(String name) {
        keyboard = name;
    }

    /** The keyboard that is connected, if one is. */
    public Optional<String> keyboard() {
        return Optional.ofNullable(keyboard);
    }

    /** @param nanos of this machine's clock */
    public void hears(KeyEvent stroke, long nanos) {
        ObjLongConsumer<KeyEvent> now = listener;
        if (now != null) {
            now.accept(stroke, nanos);
        }
    }

    /** Whether somebody listens, so that what is played is no gesture of its own. */
    public boolean isListenedTo() {
        return listener != null;
    }

    void listen(ObjLongConsumer<KeyEvent> newListener) {
        listener = newListener;
    }
}
