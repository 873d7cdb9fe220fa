package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;

/**
 * Ideas for a progression, one chord changed in each, the best first; and the best of all their combinations.
 *
 * <p>Only what does in its place what the chord did, by {@link Replacement}, is tried: chords of the parallel scales, with an added ninth
 * where that stands firm in the key; the dominant of the next chord on the same root; the fourth in place of the third;
 * a seventh or ninth that is the first, third or fifth of the key, and the seventh of V.
 *
 * <p>The score of a progression is
 *
 * <pre>
 *   Σ neighbours ( 2 · tones kept, up to two + 3 · bass moves by a half step
 *                  + 1 · outside tones that move on by a half step + 3 · a move players know
 *                  + 3 · a dominant leads home − 4 · two borrowed side by side, or one beside its own root )
 * + Σ chords     ( 2 · added tones that stand firm + 3 · borrowed − 1 · each degree changed beyond the first
 *                  − 4 · changed at all − 6 · the tonic leaves its root − 6 · changed though it is the last
 *                  − 1 · weight of what clashes with the tune )
 * </pre>
 *
 * and that of an idea is what its one change adds. The weight of a clash is that of {@link
 * monochord.harmony.melody.Fit}, judged with the other chords as they were. Since only neighbours count together, the
 * best combination is found exactly, chord by chord. That is done up to {@value #EXACT_BARS} bars; in longer ones only
 * the {@value #BOUND} best ideas for each chord are combined.
 *
 * <p>Common practice, no source: advice for the ear to decide, and to be agreed with the band.
 *
 * @param ideas the best first; of equal ones the earlier in the progression
 * @param best the best combination; the progression itself if nothing makes it better
 * @param combined the ideas that are in it, in order of place
 * @param gain what the combination adds to the score
 */
public record Recolour(
        Progression progression,
        Optional<Melody> melody,
        List<Idea> ideas,
        Progression best,
        List<Idea> combined,
        int gain) {
    /** Up to so many bars all combinations are weighed. */
    public static final int EXACT_BARS = 16;

    static final int BOUND = 12;

    public static Recolour of(Progression progression, Optional<Melody> melody) {
        OptionTable canvas = new OptionTable(progression, melody.orElse(null));
        List<Idea> ideas = ideas(canvas);
        Combination combination = Combination.best(canvas, progression.bars().size() > EXACT_BARS ? BOUND : 0);
        List<Idea> combined = new ArrayList<>();
        for (int at = 0; at < canvas.size(); at++) {
            if (!combination.chosen().get(at).isPlain()) {
                combined.add(canvas.idea(at, combination.chosen().get(at)));
            }
        }
        Progression best = Substitution.of(progression, combination.chosen());
        return new Recolour(progression, melody, ideas, best, combined, combination.score() - canvas.plainScore());
    }

    private static List<Idea> ideas(OptionTable canvas) {
        List<Idea> ideas = new ArrayList<>();
        for (int at = 0; at < canvas.size(); at++) {
            for (ChordOption shade : canvas.shades(at)) {
                if (!shade.isPlain()) {
                    ideas.add(canvas.idea(at, shade));
                }
            }
        }
        ideas.sort(Comparator.comparingInt(Idea::score).reversed());
        return List.copyOf(ideas);
    }

    /** The chords that are struck, in order. */
    static List<ChordEvent> struck(Progression progression) {
        List<ChordEvent> struck = new ArrayList<>();
        for (ChordEvent slot : progression.slots()) {
            if (!slot.held() || struck.isEmpty()) {
                struck.add(slot);
            }
        }
        return struck;
    }
}
