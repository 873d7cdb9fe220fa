/**
 * Answers that advise: what fits under a tune, other chords for some, chords under a tune, where a chord may go next. May
 * import what {@code view} may, and {@link monochord.view.music}.
 */
package monochord.view.advice;
