package monochord.shell.playback;

import java.util.function.Function;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Look;

/**
 * A strip of the terminal in which something moves while the prompt waits: the keys that sound, the keys that are held.
 * May be called from any thread; what the terminal cannot do is silently left out.
 */
public interface LiveStrip {
    /** Whether there is a prompt at all under which something could happen. */
    default boolean isThere() {
        return true;
    }

    /** Shows this in place of what the strip showed. */
    void show(Function<Look, StyledText> picture);

    /** Takes the strip away. */
    void clear();

    /** Says something above the prompt, which stays as it is, with what was typed so far. */
    void say(Answer answer);

    /** Enters a line as if it had been typed at an empty prompt; what was typed so far waits. */
    void enter(String line);

    /** For pipes, scripts and terminals that cannot redraw. */
    static LiveStrip none() {
        return new LiveStrip() {
            @Override
            public boolean isThere() {
                return false;
            }

            @Override
            public void show(Function<Look, StyledText> picture) {
                // nobody sees it
            }

            @Override
            public void clear() {
                // nothing is there
            }

            @Override
            public void say(Answer answer) {
                // what moves between the lines of a pipe belongs to none of them
            }

            @Override
            public void enter(String line) {
                // a pipe types its own lines
            }
        };
    }
}
