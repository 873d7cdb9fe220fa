package monochord.sound.play;

import java.util.concurrent.CompletableFuture;
import java.util.function.LongSupplier;
import monochord.sound.JavaSound;

/**
 * Something handed to the player. Neither future ever fails.
 *
 * @param started done when the first note is due, or when it is clear that nothing will sound
 * @param ended done when the last note has died away, or when it was stopped, replaced, or never began;
 *     {@link Outcome#SOUNDING} if it was heard to its end
 * @param position what {@link #framesHeard} tells
 */
public record Playing(CompletableFuture<Outcome> started, CompletableFuture<Outcome> ended, LongSupplier position) {
    /** Frames of {@value JavaSound#RATE} a second that have come out of the card; what it still holds is not counted. */
    public long framesHeard() {
        return position.getAsLong();
    }

    /** Seconds of it that have been heard. May be asked from any thread, at any time. */
    public double secondsHeard() {
        return (double) framesHeard() / JavaSound.RATE;
    }
}
