/**
 * The sound, the keys and the strip of a rehearsal: plays one round behind the prompt, hears what is played with it, and says
 * when it is over. What follows is decided in {@code course.rehearsal}.
 *
 * <p>Part of the shell room. Imports {@code playback} and the rooms of scores, sound and pictures; nothing of the sitting.
 */
package monochord.shell.rehearsal;
