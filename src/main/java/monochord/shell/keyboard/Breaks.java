package monochord.shell.keyboard;

import monochord.text.Phrase;

/**
 * When the hands need a rest: after half an hour of playing with no pause of five minutes.
 *
 * <p>That long practice without breaks is a main reported cause of players' injuries: Ackermann, Frontiers in Psychology 5
 * (2014), 706. The two times are common practice, no source.
 */
final class Breaks {
    static final Phrase CAUTION =
            Phrase.of("You have played for half an hour. Leave the keys for five minutes and let the arms hang; "
                    + "if anything hurts, stop for today.");

    private static final long MINUTE_MILLIS = 60_000;
    private static final long PLAYING_MILLIS = 30 * MINUTE_MILLIS;
    private static final long PAUSE_MILLIS = 5 * MINUTE_MILLIS;

    private long begun;
    private long last;
    private boolean playing;

    /** Takes note of a key, and tells whether it is time for a rest: once in half an hour. */
    boolean isDue(long now) {
        if (!playing || now - last >= PAUSE_MILLIS) {
            begun = now;
            playing = true;
        }
        last = now;
        boolean due = now - begun >= PLAYING_MILLIS;
        begun = due ? now : begun;
        return due;
    }
}
