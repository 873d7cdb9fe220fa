package monochord.shell.playback;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import monochord.sound.Performance;
import monochord.text.Phrase;

/** What makes things heard while the prompt stays usable. */
public interface Ear {
    /**
     * Begins to play, in place of what sounded before.
     *
     * @return a line to show about it; empty for none
     */
    Phrase play(Performance performance);

    /** Makes ready what playing needs, behind whatever else goes on. */
    default void warm() {
        // most have nothing to make ready
    }

    /** Tells {@code listener}, on any thread, what goes wrong after a sound has begun, in one line. */
    default void tells(Consumer<Phrase> listener) {
        // most have nothing to tell
    }

    /** The same for what must not be looked at while it sounds: {@link #heard} says nothing about it. */
    default Phrase playUnseen(Performance performance) {
        return play(performance);
    }

    /** Why what was begun last cannot be heard, as a clause; nothing where it sounds. */
    default Optional<Phrase> silence() {
        return Optional.empty();
    }

    /** What was begun, while it has neither ended nor been stopped. May be asked from any thread. */
    default Optional<PlayheadPosition> heard() {
        return Optional.empty();
    }

    /** The same, and for what must not be looked at, too. */
    default Optional<PlayheadPosition> playing() {
        return heard();
    }

    /** The same for something that takes a while to make; who keeps still does not ask for it. */
    default Phrase play(Supplier<Performance> performance) {
        return play(performance.get());
    }

    /** Silence at once. */
    void stop();

    /** Waits until what was begun has been heard; for command lines, which end after one verb. */
    void listenToTheEnd();

    /** One that keeps still, for settings without sound. */
    static Ear silent() {
        return new Ear() {
            @Override
            public Phrase play(Performance performance) {
                return Phrase.NOTHING;
            }

            @Override
            public Phrase play(Supplier<Performance> performance) {
                return Phrase.NOTHING;
            }

            @Override
            public void stop() {
                // nothing sounds
            }

            @Override
            public void listenToTheEnd() {
                // there is nothing to wait for
            }
        };
    }
}
