package monochord.harmony.motion;

import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;

/**
 * One voice from one chord to the next.
 *
 * @param voice its number, from 0 at the bottom, counted in the fuller of the two chords
 */
public record VoiceMove(int voice, Pitch from, Pitch to) {
    /** Half steps, negative when it goes down. */
    public int semitones() {
        return to.midiNumber() - from.midiNumber();
    }

    /** Letters moved, negative when it goes down. */
    public int staffSteps() {
        return to.staffPosition() - from.staffPosition();
    }

    /** 1 up, −1 down, 0 where the same key is held, whatever its name. */
    public int direction() {
        return Integer.signum(semitones());
    }

    public boolean isStill() {
        return semitones() == 0;
    }

    /** Whether it goes further than the next letter. */
    public boolean isLeap() {
        return Math.abs(staffSteps()) > 1;
    }

    public Interval interval() {
        return from.to(to);
    }

    @Override
    public String toString() {
        return from + "-" + to;
    }
}
