package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;

/**
 * A way to play a task that is heard as another way than the best one: another tone on top, the hands opened out or closed
 * up, with the root or without. Ways that differ in an inner voice here and there are none.
 *
 * @param differs what differs, a clause
 * @param asked what a musician says to get it, such as {@code spread} or {@code melody E5}
 */
public record AlternativeVoicing(VoicedProgression way, Phrase differs, Phrase asked) {
    private static final int MOST_TOPS = 2;

    /** How much more than the best a way may cost for each chord and still be worth playing; ours, no source. */
    private static final int WORTH_PLAYING = 4;

    /** The nearest to the best first among those with another tone on top, then other styles. */
    public static List<AlternativeVoicing> than(VoicedProgression best) {
        List<AlternativeVoicing> ways = new ArrayList<>(otherTops(best));
        for (VoicingStyle style : VoicingStyle.values()) {
            difference(best.task(), style)
                    .flatMap(differs -> inStyle(best, style, differs))
                    .ifPresent(ways::add);
        }
        return List.copyOf(ways);
    }

    private static List<AlternativeVoicing> otherTops(VoicedProgression best) {
        VoicingTask task = best.task();
        boolean free = !task.hasTune()
                && task.style() != VoicingStyle.SHELL
                && task.style() != VoicingStyle.UNDER_TUNE
                && task.chords().size() > 1;
        int dearest = best.cost().total() + WORTH_PLAYING * task.chords().size();
        return !free
                ? List.of()
                : VoicingSearch.bestOfEachTop(task).stream()
                        .filter(way -> way.cost().total() <= dearest && isHeardApart(way, best))
                        .sorted(Comparator.comparingInt(way -> way.cost().total()))
                        .limit(MOST_TOPS)
                        .map(AlternativeVoicing::withAnotherTop)
                        .toList();
    }

    /**
     * Whether the first chord has another note on top, not the root that a bass player has, and at least half of the others
     * have as well.
     */
    private static boolean isHeardApart(VoicedProgression way, VoicedProgression best) {
        int chords = best.voicings().size();
        long apart = IntStream.range(0, chords)
                .filter(i -> !top(way, i).soundsLike(top(best, i)))
                .count();
        boolean root = !way.task().style().choice().hasBass()
                && top(way, 0).name().equals(way.task().chords().get(0).root());
        return !root && !top(way, 0).name().equals(top(best, 0).name()) && 2 * apart >= chords;
    }

    private static Pitch top(VoicedProgression way, int index) {
        return way.voicings().get(index).top();
    }

    private static AlternativeVoicing withAnotherTop(VoicedProgression way) {
        Chord first = way.task().chords().get(0);
        Pitch top = top(way, 0);
        Phrase differs =
                Phrase.of("it begins with the {0} of {1} on top", VoicingExplanation.role(top.name(), first), first);
        return new AlternativeVoicing(way, differs, Phrase.of("melody {0}", top));
    }

    private static Optional<AlternativeVoicing> inStyle(VoicedProgression best, VoicingStyle style, Phrase differs) {
        try {
            VoicedProgression way = VoicingSearch.best(best.task().in(style));
            return Optional.of(new AlternativeVoicing(way, differs, style.asked()));
        } catch (Unvoiced notWithinReach) {
            return Optional.empty();
        }
    }

    private static Optional<Phrase> difference(VoicingTask task, VoicingStyle other) {
        return switch (task.style()) {
            case CLOSE, SHELL -> other == VoicingStyle.SPREAD ? openedOut() : rootless(task, other);
            case SPREAD, ALONE -> other == VoicingStyle.CLOSE ? closedUp() : rootless(task, other);
            case WITH_BASS ->
                other == VoicingStyle.DROP_TWO
                        ? Optional.of(Phrase.of("it is opened out, one voice an octave lower"))
                        : withBass(other);
            case DROP_TWO -> withBass(other);
            case CHOIR, UNDER_TUNE -> Optional.empty();
        };
    }

    private static Optional<Phrase> openedOut() {
        return Optional.of(Phrase.of("it is opened out, with two notes in the left hand"));
    }

    private static Optional<Phrase> closedUp() {
        return Optional.of(Phrase.of("it is closed up, with the bass alone in the left hand"));
    }

    private static Optional<Phrase> withBass(VoicingStyle other) {
        return other == VoicingStyle.ALONE
                ? Optional.of(Phrase.of("it has the bass, where nobody else plays it"))
                : Optional.empty();
    }

    private static Optional<Phrase> rootless(VoicingTask task, VoicingStyle other) {
        boolean sevenths = task.chords().stream()
                .anyMatch(chord -> Stream.of(Interval.MINOR_SEVENTH, Interval.MAJOR_SEVENTH)
                        .anyMatch(chord.kind()::holds));
        return sevenths && other == VoicingStyle.WITH_BASS
                ? Optional.of(Phrase.of("it leaves roots to a bass player"))
                : Optional.empty();
    }
}
