/**
 * What sounds or is written down: a small tree of notes and rests, and the hands that play it.
 *
 * <p>A {@link monochord.score.Score} is made by hand, or from chords by {@link monochord.score.Comping}: each {@link
 * monochord.score.HeldChord} becomes a {@link monochord.score.TimedVoicing}, what both hands hold. Voicings, a line, or a line over
 * voicings are a {@link monochord.score.Piece}; a {@link monochord.score.Pattern} says how the hands strike it, and it
 * becomes a score. Flattened, a score is a list of {@link monochord.score.Sounding}: which pitch, from when, for how
 * long. Times are exact {@link monochord.theory.note.Beats}.
 *
 * <p>No I/O, no mutable state. May import {@code theory} and {@code harmony}.
 */
package monochord.score;
