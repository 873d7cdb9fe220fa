/**
 * Pitch, interval, scale, key, chord and numeral, and the text form of each.
 *
 * <p>Everything here is a point or a step on one line, the line of fifths … E♭ B♭ F C G D A …, with octaves beside it.
 * A note name is a point; an interval is a step along the line; a mode is a window of seven neighbours; a degree is a
 * point seen from the tonic. Transposing is adding, so spelling is never looked up and never guessed.
 *
 * <table>
 * <caption>The values and how they are written</caption>
 * <tr><td>{@link monochord.theory.note.NoteName}<td>{@code Eb}
 * <tr><td>{@link monochord.theory.note.Beats}<td>{@code 3/2}
 * <tr><td>{@link monochord.theory.note.Pitch}<td>{@code Eb4}
 * <tr><td>{@link monochord.theory.note.Interval}<td>{@code m3}
 * <tr><td>{@link monochord.theory.note.Degree}<td>{@code b6}
 * <tr><td>{@link monochord.theory.Mode}<td>{@code dorian}
 * <tr><td>{@link monochord.theory.Scale}<td>{@code E harmonic minor}
 * <tr><td>{@link monochord.theory.Key}<td>{@code D major}
 * <tr><td>{@link monochord.theory.Chord}<td>{@code Abmaj7/C}
 * <tr><td>{@link monochord.theory.Numeral}<td>{@code bVImaj7}, {@code V65/ii}
 * </table>
 *
 * <p>Imports nothing but the JDK.
 */
package monochord.theory;
