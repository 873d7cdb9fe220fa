package monochord.harmony.after;

import java.util.Optional;
import monochord.harmony.HarmonicFunction;
import monochord.theory.Chord;
import monochord.theory.Numeral;

/**
 * One way on from a chord.
 *
 * @param start the chord it comes from
 * @param numeral the chord it goes to
 * @param reason why it goes there, a clause with the signs of printed music
 * @param weight how strong the reason is, from 1 to 8
 * @param from what the chord it comes from does
 * @param to what this one does
 * @param backing counts from songs, or null
 */
public record Continuation(
        Numeral start,
        Numeral numeral,
        Chord chord,
        ChordMove move,
        String reason,
        int weight,
        HarmonicFunction from,
        HarmonicFunction to,
        SongCounts.Backing backing) {
    private static final int PER_WEIGHT = 10;
    private static final int PER_SHARE = 40;
    private static final int PER_TONE = 2;
    private static final int ROUND = 4;

    public Optional<SongCounts.Backing> backed() {
        return Optional.ofNullable(backing);
    }

    /** What it is ranked by: ten for each weight, up to forty by its share in songs, and how smoothly it moves. */
    int score() {
        int counted = backing == null || backing.isFromFewSongs() ? 0 : PER_SHARE * backing.times() / backing.of();
        int smooth = PER_TONE * move.held().size() - move.halfSteps();
        return PER_WEIGHT * weight + counted + smooth + (from.leadsTo(to) ? ROUND : 0);
    }
}
