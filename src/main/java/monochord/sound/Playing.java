package monochord.sound;

import java.util.concurrent.CompletableFuture;

/**
 * Something handed to the player. Neither future ever fails.
 *
 * @param started done when the first note is due, or when it is clear that nothing will sound
 * @param ended done when the last note has died away, or when it was stopped, replaced, or never began
 */
public record Playing(CompletableFuture<Outcome> started, CompletableFuture<Void> ended) {}
