package monochord.harmony.after;

import java.util.List;
import java.util.Optional;
import monochord.harmony.HarmonicFunction;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;

/**
 * One way on from a chord.
 *
 * @param start the chord it comes from
 * @param numeral the chord it goes to
 * @param reason why it goes there, a clause
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
        Phrase reason,
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

    /** What both chords do, how the root goes, what stays and how far all voices go: a clause. */
    public Phrase movement() {
        List<NoteName> held = move.held();
        Phrase stays = held.isEmpty()
                ? Phrase.of("nothing stays")
                : Phrase.counted(held.size(), "{0} stays", "{0} stay", Phrase.list(held));
        return Phrase.of(
                "{0} to {1}, {2}, {3}, {4}",
                from.label(), to.label(), move.rootInWords(), stays, MusicWords.halfSteps(move.halfSteps()));
    }

    /** What it is ranked by: ten for each weight, up to forty by its share in songs, and how smoothly it moves. */
    int score() {
        int counted = backing == null || backing.isFromFewSongs() ? 0 : PER_SHARE * backing.times() / backing.of();
        int smooth = PER_TONE * move.held().size() - move.halfSteps();
        return PER_WEIGHT * weight + counted + smooth + (from.leadsTo(to) ? ROUND : 0);
    }
}
