/**
 * Music on staves: {@link monochord.view.staff.StaffMusic} is laid out by {@link monochord.view.staff.Engraving} into a
 * list of {@link monochord.view.drawn.Drawn} things, each with its meaning, and {@link monochord.view.staff.StaffSvg}
 * writes them as a picture. All lengths are in staff spaces, the distance between two lines; x runs to the right and y
 * down.
 *
 * <p>Imports what {@code view} may.
 */
package monochord.view.staff;
