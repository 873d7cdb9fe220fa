package monochord.shell.playback;

import monochord.sound.Performance;

/**
 * What sounds, and how far the listener's ear has come in it.
 *
 * @param performance all of it; which notes sound at a moment, its score's soundings tell
 * @param beats from the beginning of its score, as heard, not as handed to the card; below 0 while it is
 *     counted in
 */
public record PlayheadPosition(Performance performance, double beats) {}
