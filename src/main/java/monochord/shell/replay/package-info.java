/**
 * Notebooks typed again: a sitting closed off from the world, what it answers to each line, and where that differs from what
 * is written.
 *
 * <p>May import every other room, and of the shell {@code sitting}, {@code journal} and {@code answer}.
 */
package monochord.shell.replay;
