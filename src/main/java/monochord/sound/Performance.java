package monochord.sound;

import java.util.List;
import java.util.Optional;
import javax.sound.midi.Sequence;
import monochord.score.BarGrid;
import monochord.score.Score;
import monochord.theory.Key;
import monochord.theory.note.Beats;

/**
 * How a score is played.
 *
 * @param tempo beats a minute, from {@value #SLOWEST} to {@value #FASTEST}
 * @param right the patch of the right hand, of the tune, and of what names no hand
 * @param left the patch of the left hand
 * @param key written into MIDI files; it changes nothing that sounds
 * @param metre written into MIDI files; besides, it says how long a count-in is
 * @param countedIn whether a bar is counted before the score begins
 * @param clicked whether beats click on, softly, while the score sounds
 * @param levels how loud the parts of the score are made, in order of time; until the first, as they are
 * @param bank where the sounds are taken from; our own if there is none
 */
public record Performance(
        Score score,
        int tempo,
        Patch right,
        Patch left,
        Optional<Key> key,
        BarGrid metre,
        boolean countedIn,
        boolean clicked,
        List<LevelChange> levels,
        Optional<Bank> bank) {
    public static final int SLOWEST = 20;
    public static final int FASTEST = 300;
    /** Beats a minute where nobody says: an easy walking pace. */
    public static final int USUAL_TEMPO = 84;

    private static final double SECONDS_PER_MINUTE = 60;

    /** @throws IllegalArgumentException if the tempo is out of range */
    public Performance {
        levels = List.copyOf(levels);
        if (tempo < SLOWEST || tempo > FASTEST) {
            throw new IllegalArgumentException(
                    "tempo must be from " + SLOWEST + " to " + FASTEST + " beats a minute, not " + tempo);
        }
    }

    /** On the piano, at the usual tempo, in no key and in bars of four, from our own bank. */
    public static Performance of(Score score) {
        return new Performance(
                score,
                USUAL_TEMPO,
                Patch.PIANO,
                Patch.PIANO,
                Optional.empty(),
                BarGrid.COMMON,
                false,
                false,
                List.of(),
                Optional.empty());
    }

    /** @throws IllegalArgumentException if the tempo is out of range */
    public Performance at(int beatsPerMinute) {
        return new Performance(score, beatsPerMinute, right, left, key, metre, countedIn, clicked, levels, bank);
    }

    public Performance with(Patch both) {
        return with(both, both);
    }

    public Performance with(Patch leftHand, Patch rightHand) {
        return new Performance(score, tempo, rightHand, leftHand, key, metre, countedIn, clicked, levels, bank);
    }

    public Performance in(Key written) {
        return new Performance(
                score, tempo, right, left, Optional.of(written), metre, countedIn, clicked, levels, bank);
    }

    public Performance in(BarGrid bars) {
        return new Performance(score, tempo, right, left, key, bars, countedIn, clicked, levels, bank);
    }

    public Performance countedIn(boolean counted) {
        return new Performance(score, tempo, right, left, key, metre, counted, clicked, levels, bank);
    }

    public Performance clicked(boolean clicks) {
        return new Performance(score, tempo, right, left, key, metre, countedIn, clicks, levels, bank);
    }

    public Performance levelled(List<LevelChange> parts) {
        return new Performance(score, tempo, right, left, key, metre, countedIn, clicked, parts, bank);
    }

    public Performance from(Optional<Bank> sounds) {
        return new Performance(score, tempo, right, left, key, metre, countedIn, clicked, levels, sounds);
    }

    /** The same way of playing for another score. */
    public Performance of(Score other, List<LevelChange> parts) {
        return new Performance(other, tempo, right, left, key, metre, countedIn, clicked, parts, bank);
    }

    /** Beats before the score begins: a bar, and with a pick-up as much of the next as comes before it. */
    public Beats countIn() {
        if (!countedIn) {
            return Beats.ZERO;
        }
        Beats begun = metre.within(metre.pickup());
        return begun.isZero() ? metre.bar() : metre.bar().times(2).minus(begun);
    }

    /** From the first click or note to the end of the score, in seconds; what dies away after it is not counted. */
    public double seconds() {
        Beats all = countIn().plus(score.beats());
        return (double) all.numerator() / all.denominator() * SECONDS_PER_MINUTE / tempo;
    }

    /** Where the score is after so many seconds, in beats; below 0 while it is counted in. */
    public double beatsAfter(double seconds) {
        Beats before = countIn();
        return seconds * tempo / SECONDS_PER_MINUTE - (double) before.numerator() / before.denominator();
    }

    /** Seconds after which the score is there: the reverse of {@link #beatsAfter}. */
    public double secondsAt(double beats) {
        Beats before = countIn();
        return (beats + (double) before.numerator() / before.denominator()) * SECONDS_PER_MINUTE / tempo;
    }

    /**
     * Track 0 has the tempo, the time signature, the key signature and the labels as text events; then come the right
     * hand on channel 1, the left hand on channel 2, the tune on channel 3 and the clicks of a count-in on channel 10, a
     * track for each that plays, 480 ticks to the beat. A note that is struck again is let go a little before.
     *
     * @throws IllegalArgumentException if a pitch lies outside MIDI's 128 notes
     */
    public Sequence sequence() {
        return new Sequencing(this).sequence();
    }
}
