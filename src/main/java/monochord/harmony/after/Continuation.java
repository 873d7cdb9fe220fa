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
 * @param road which way it goes
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
        ContinuationKind road,
        SongCounts.Backing backing) {
    private static final int PER_WEIGHT = 10;
    private static final int PER_SHARE = 40;
    private static final int PER_TONE = 2;
    private static final int ROUND = 4;
    private static final int THOUSAND = 1000;
    /** Of a thousand: a way that has to be gone, and each weight of a way that was not counted in enough songs. */
    private static final int MUST = 900;

    private static final int UNCOUNTED = 8;

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

    /**
     * How often it is gone, of a thousand: as songs have it where enough were counted; else by its reason, a way that has
     * to be gone nine times in ten, any other at most one time in twenty.
     */
    int likelihood() {
        boolean isCounted = backing != null && !backing.isFromFewSongs();
        int counted = isCounted ? THOUSAND * backing.times() / backing.of() : 0;
        return weight == Reason.MUST ? Math.max(MUST, counted) : isCounted ? counted : UNCOUNTED * weight;
    }

    /** Whether songs go this way at least so many times of a hundred. */
    public boolean isCountedFrom(int percent) {
        return backing != null && !backing.isFromFewSongs() && 100 * backing.times() >= percent * backing.of();
    }

    /** Whether the counts, which go by triads, say the same of both: an applied chord and the same chord by its degree. */
    public boolean isSameTriadAs(Continuation other) {
        return backing != null && backing.equals(other.backing) && chord.root().equals(other.chord.root());
    }

    /** What it is ranked by without counts: ten for each weight, up to forty by its share in songs, and how smoothly it moves. */
    int score() {
        int counted = backing == null || backing.isFromFewSongs() ? 0 : PER_SHARE * backing.times() / backing.of();
        int smooth = PER_TONE * move.held().size() - move.halfSteps();
        return PER_WEIGHT * weight + counted + smooth + (from.leadsTo(to) ? ROUND : 0);
    }
}
