package monochord.shell.sitting;

import java.util.Optional;
import monochord.sound.Performance;

/** What makes things heard while the prompt stays usable. */
public interface Ear {
    /**
     * Begins to play, in place of what sounded before.
     *
     * @return a line to show about it, or nothing
     */
    String play(Performance performance);

    /** The same for what must not be looked at while it sounds: {@link #heard} says nothing about it. */
    default String playUnseen(Performance performance) {
        return play(performance);
    }

    /** Why what was begun last cannot be heard, as a clause; nothing where it sounds. */
    default Optional<String> silence() {
        return Optional.empty();
    }

    /** What was begun, while it has neither ended nor been stopped. May be asked from any thread. */
    default Optional<Heard> heard() {
        return Optional.empty();
    }

    /** Silence at once. */
    void stop();

    /** Waits until what was begun has been heard; for command lines, which end after one verb. */
    void listenToTheEnd();

    /** One that keeps still, for settings without sound. */
    static Ear silent() {
        return new Ear() {
            @Override
            public String play(Performance performance) {
                return "";
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
