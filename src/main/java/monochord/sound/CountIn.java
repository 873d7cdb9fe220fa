package monochord.sound;

import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import monochord.score.BarGrid;
import monochord.theory.note.Beats;

/**
 * The clicks before the music, and below it where it is clicked through: one a beat, the first of a bar higher.
 *
 * <p>Source: General MIDI Level 1 Percussion Key Map, MIDI Manufacturers Association, 1991: channel 10, high wood block
 * 76, low wood block 77; from memory.
 */
final class CountIn {
    private static final int CHANNEL = 9;
    private static final int HIGH = 76;
    private static final int LOW = 77;
    private static final int VELOCITY = 70;
    /**
     * Where beats click through the music, they stay well below it, and below -20 dBFS: nothing startles. Common practice, no
     * source.
     */
    private static final int SOFT = 20;

    private static final int SOFTER = 18;

    private static final Beats LENGTH = Beats.of(1, 8);

    private CountIn() {}

    static void write(Performance performance, Track track) throws InvalidMidiDataException {
        BarGrid metre = performance.metre();
        Sequencing.add(track, 0, HandTracks.volume(CHANNEL));
        Beats music = performance.countIn();
        Beats end = performance.clicked() ? music.plus(performance.score().beats()) : music;
        for (Beats now = Beats.ZERO; now.compareTo(end) < 0; now = next(now, metre)) {
            int velocity = !performance.clicked() ? VELOCITY : now.compareTo(music) < 0 ? SOFT : SOFTER;
            int note = metre.within(now).isZero() ? HIGH : LOW;
            long tick = Sequencing.ticks(now);
            Sequencing.add(track, tick, Sequencing.message(ShortMessage.NOTE_ON, CHANNEL, note, velocity));
            long off = tick + Sequencing.ticks(LENGTH);
            Sequencing.add(track, off, Sequencing.message(ShortMessage.NOTE_OFF, CHANNEL, note, 0));
        }
    }

    /** A beat on, but never across a bar line. */
    private static Beats next(Beats now, BarGrid metre) {
        Beats left = metre.bar().minus(metre.within(now));
        return now.plus(left.compareTo(metre.counted()) < 0 ? left : metre.counted());
    }
}
