package monochord.shell.keyboard;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import monochord.shell.line.LineState;
import monochord.shell.rehearsal.KeyFeed;
import monochord.shell.sitting.PlaybackState;
import monochord.sound.keyboard.Connection;
import monochord.sound.keyboard.KeyEvent;
import monochord.sound.keyboard.KeyboardTrouble;
import monochord.sound.keyboard.MidiKeyboard;
import monochord.text.Phrase;

/**
 * The seat at the keyboard beside the line. What is played comes on threads of the system's and is handed to one queue; a
 * thread of our own takes it from there, so nothing that a keyboard sends can hold up or break the line.
 */
public final class MidiSession {
    private static final long TICK_MILLIS = 20;

    private final BlockingQueue<SessionEvent> events = new LinkedBlockingQueue<>();
    private final PlayedKeys playing;
    private final KeyFeed feed;
    private final LongSupplier clock;
    private Connection connection;
    private volatile String lost = "";

    private sealed interface SessionEvent {
        record Played(Connected by, KeyEvent stroke, long at) implements SessionEvent {}

        record Sits(boolean down) implements SessionEvent {}

        record Waits(LineState scene) implements SessionEvent {}
    }

    /** One keyboard from its being connected to its being let go. */
    private static final class Connected {
        private final String name;

        Connected(String name) {
            this.name = name;
        }
    }

    private volatile Connected current;

    /** One on the stage's board, told from now on where the sitting stands. */
    public MidiSession(PlaybackState stage) {
        this(stage, () -> TimeUnit.NANOSECONDS.toMillis(System.nanoTime()));
    }

    MidiSession(PlaybackState stage, LongSupplier clock) {
        this.clock = clock;
        this.playing = new PlayedKeys(stage);
        this.feed = stage.keys();
        stage.tell(scene -> events.add(new SessionEvent.Waits(scene)));
        Thread thread = new Thread(this::take, "keyboard");
        thread.setDaemon(true);
        thread.start();
    }

    /** The keyboard that is connected, if one is. */
    public Optional<String> connected() {
        return Optional.ofNullable(current).map(now -> now.name);
    }

    /** The keyboard that went away while it was connected; empty if none did. */
    public String lost() {
        return lost;
    }

    /**
     * Listens to this keyboard, in place of another.
     *
     * @throws KeyboardTrouble if it cannot be listened to; then none is
     */
    public void connect(MidiKeyboard keyboard) throws KeyboardTrouble {
        disconnect();
        Connected next = new Connected(keyboard.name());
        current = next;
        try {
            connection = keyboard.connect(stroke -> hears(next, stroke));
            lost = "";
            feed.connects(next.name);
            events.add(new SessionEvent.Sits(true));
        } catch (KeyboardTrouble trouble) {
            current = null;
            throw trouble;
        }
    }

    /** On a thread of the system's. While somebody listens for the time of each key, it is no gesture besides. */
    private void hears(Connected by, KeyEvent stroke) {
        feed.hears(stroke, System.nanoTime());
        if (!feed.isListenedTo() || stroke instanceof KeyEvent.Gone) {
            events.add(new SessionEvent.Played(by, stroke, clock.getAsLong()));
        }
    }

    /** Listens to none. */
    public void disconnect() {
        Connected last = current;
        if (last != null) {
            current = null;
            feed.connects(null);
            connection.close();
            events.add(new SessionEvent.Sits(false));
        }
    }

    private void take() {
        try {
            while (true) {
                SessionEvent event =
                        playing.isQuiet() ? events.take() : events.poll(TICK_MILLIS, TimeUnit.MILLISECONDS);
                safely(event);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** A fault of ours in what was played ends with it; the line and the next notes go on. */
    private void safely(SessionEvent event) {
        try {
            take(event);
        } catch (RuntimeException fault) {
            playing.forget();
        }
    }

    private void take(SessionEvent event) {
        SessionEvent next = event;
        while (next != null) {
            if (next instanceof SessionEvent.Waits waits) {
                playing.waits(waits.scene());
            } else if (next instanceof SessionEvent.Sits sits) {
                playing.sits(sits.down());
            } else if (next instanceof SessionEvent.Played played) {
                take(played);
            }
            next = events.poll();
        }
        playing.passes(clock.getAsLong());
    }

    private void take(SessionEvent.Played played) {
        if (played.stroke() instanceof KeyEvent.Gone) {
            goes(played.by());
        } else {
            playing.hears(played.stroke(), played.at());
        }
    }

    private void goes(Connected gone) {
        if (gone == current) {
            playing.sits(false);
            current = null;
            feed.connects(null);
            lost = gone.name;
            playing.says(Phrase.of(
                    "{0} is gone. Go on by typing; once it is plugged in again: keys.", Phrase.typed(gone.name)));
        }
    }
}
