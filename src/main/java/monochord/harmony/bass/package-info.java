/**
 * Lines for the bass under a progression: by half steps, over a pedal, and walking.
 *
 * <p>Part of the harmony room; imports {@code harmony}, {@code text} and {@code theory}.
 */
package monochord.harmony.bass;
