package monochord.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import monochord.harmony.motion.VoiceLeading;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * The right hand above a bass: the tones of each chord in close position between G3 and E5, moving as little as it can.
 *
 * <p>The first chord lies where its middle is nearest to E4. Each further chord takes, of all its positions, the one
 * with the least movement from the chord before, counted by {@link VoiceLeading}; where two move as little, the one nearer to
 * E4, then the lower. A close position spans less than an octave, so every hand that spans an octave can play it.
 * Common practice (keep what is common, move the rest the shortest way), no source; three upper notes within an octave:
 * Open Music Theory, 1st edition, on keyboard style.
 *
 * <p>A hand takes five notes at most. From a fuller chord one tone after another is left out, in this order: the
 * perfect fifth, the eleventh over a major third, the note the left hand plays, the root, then the tones last named.
 * Common practice, no source.
 */
public final class RightHand {
    static final Pitch LOWEST = Pitch.parse("G3");
    static final Pitch HIGHEST = Pitch.parse("E5");
    private static final Pitch HOME = Pitch.parse("E4");
    private static final int MOST_NOTES = 5;

    private RightHand() {}

    /** One position for each chord, in order, each bottom to top. */
    public static List<List<Pitch>> follow(List<HeldChord> changes) {
        List<List<Pitch>> line = new ArrayList<>();
        List<Pitch> last = List.of();
        for (HeldChord change : changes) {
            last = nearest(positions(tones(change)), last);
            line.add(last);
        }
        return List.copyOf(line);
    }

    private static List<Pitch> nearest(List<List<Pitch>> positions, List<Pitch> last) {
        Comparator<List<Pitch>> nearness =
                Comparator.comparingInt(keys -> last.isEmpty() ? 0 : VoiceLeading.halfSteps(last, keys));
        return positions.stream()
                .min(nearness.thenComparing(RightHand::twiceFromHome).thenComparing(keys -> keys.get(0)))
                .orElseThrow();
    }

    private static int twiceFromHome(List<Pitch> keys) {
        int ends = keys.get(0).midiNumber() + keys.get(keys.size() - 1).midiNumber();
        return Math.abs(ends - 2 * HOME.midiNumber());
    }

    /** The tones the right hand plays, at most five and no key twice, in the order of the chord. */
    public static List<NoteName> tones(HeldChord change) {
        List<NoteName> kept = new ArrayList<>();
        change.tones().stream()
                .filter(tone -> kept.stream().noneMatch(tone::soundsLike))
                .forEach(kept::add);
        for (NoteName dispensable : dispensable(change)) {
            if (kept.size() > MOST_NOTES) {
                kept.remove(dispensable);
            }
        }
        return List.copyOf(kept.subList(0, Math.min(MOST_NOTES, kept.size())));
    }

    private static List<NoteName> dispensable(HeldChord change) {
        NoteName root = change.tones().get(0);
        List<NoteName> order = new ArrayList<>();
        order.add(root.plus(Interval.PERFECT_FIFTH));
        if (change.tones().contains(root.plus(Interval.MAJOR_THIRD))) {
            order.add(root.plus(Interval.PERFECT_FOURTH));
        }
        order.add(change.bass());
        order.add(root);
        return order;
    }

    /** Every close position of these tones between G3 and E5, each bottom to top: each tone in turn at the bottom. */
    public static List<List<Pitch>> positions(List<NoteName> tones) {
        List<List<Pitch>> positions = new ArrayList<>();
        for (NoteName lowest : tones) {
            Pitch bottom = Pitch.atOrAbove(lowest, LOWEST);
            while (bottom.midiNumber() <= HIGHEST.midiNumber()) {
                positions.add(upFrom(bottom, tones));
                bottom = bottom.plus(Interval.OCTAVE);
            }
        }
        positions.removeIf(keys -> keys.get(keys.size() - 1).midiNumber() > HIGHEST.midiNumber());
        return positions;
    }

    private static List<Pitch> upFrom(Pitch bottom, List<NoteName> tones) {
        return tones.stream()
                .map(tone -> Pitch.atOrAbove(tone, bottom))
                .sorted()
                .toList();
    }
}
