package monochord.sound;

import java.util.Optional;
import javax.sound.midi.Sequence;
import monochord.score.Score;
import monochord.theory.Key;

/**
 * How a score is played.
 *
 * @param tempo beats a minute, from {@value #SLOWEST} to {@value #FASTEST}
 * @param right the patch of the right hand, and of what names no hand
 * @param left the patch of the left hand
 * @param key written into MIDI files; it changes nothing that sounds
 */
public record Performance(Score score, int tempo, Patch right, Patch left, Optional<Key> key) {
    public static final int SLOWEST = 20;
    public static final int FASTEST = 300;
    /** Beats a minute where nobody says: an easy walking pace. */
    public static final int USUAL_TEMPO = 84;

    /** @throws IllegalArgumentException if the tempo is out of range */
    public Performance {
        if (tempo < SLOWEST || tempo > FASTEST) {
            throw new IllegalArgumentException(
                    "tempo must be from " + SLOWEST + " to " + FASTEST + " beats a minute, not " + tempo);
        }
    }

    /** On the piano, at the usual tempo, in no key. */
    public static Performance of(Score score) {
        return new Performance(score, USUAL_TEMPO, Patch.PIANO, Patch.PIANO, Optional.empty());
    }

    /** @throws IllegalArgumentException if the tempo is out of range */
    public Performance at(int beatsPerMinute) {
        return new Performance(score, beatsPerMinute, right, left, key);
    }

    public Performance with(Patch both) {
        return with(both, both);
    }

    public Performance with(Patch leftHand, Patch rightHand) {
        return new Performance(score, tempo, rightHand, leftHand, key);
    }

    public Performance in(Key written) {
        return new Performance(score, tempo, right, left, Optional.of(written));
    }

    /**
     * Track 0 has the tempo, the key signature and the labels as text events, track 1 the right hand on channel 1,
     * track 2 the left hand on channel 2, 480 ticks to the beat. Bass and top are a little louder than what lies
     * between. A note that is struck again is let go a little before.
     *
     * @throws IllegalArgumentException if a pitch lies outside MIDI's 128 notes
     */
    public Sequence sequence() {
        return new Sequencing(this).sequence();
    }
}
