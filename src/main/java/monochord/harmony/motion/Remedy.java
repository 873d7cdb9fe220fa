package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.ChordNames;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * What could be held where a change moves too much, worked out from its notes.
 *
 * <p>Source: keep the common tone in its voice, else go against the bass, Open Music Theory, 1st edition (2014), on
 * figured bass; the suspended fourth as a note to hold, common practice, no source.
 */
public sealed interface Remedy {
    /** A note of both chords that could have stayed on its key. */
    record Hold(Pitch pitch) implements Remedy {}

    /**
     * A fourth in place of the third makes a note that both chords have.
     *
     * @param plain the chord as it stands
     * @param suspended the same with its fourth
     * @param tone that fourth
     * @param first whether it is the first chord of the change; else the tone hangs over from the first into the second
     */
    record Suspend(Chord plain, Chord suspended, NoteName tone, boolean first) implements Remedy {}

    /** Nothing can be held: the other voices go the way the bass does not. */
    record AgainstBass(boolean bassGoesUp) implements Remedy {}

    /** The simplest remedy that the notes of the change allow; none where the bass stays and nothing can be held. */
    static Optional<Remedy> of(MotionStep step) {
        return hold(step)
                .or(() -> suspend(step.to(), step.from(), false))
                .or(() -> suspend(step.from(), step.to(), true))
                .or(() -> againstBass(step));
    }

    /** The highest such note; the bass is left out, for it carries the root. */
    private static Optional<Remedy> hold(MotionStep step) {
        List<Pitch> kept = step.kept();
        for (int i = step.moves().size() - 1; i > 0; i--) {
            Pitch pitch = step.moves().get(i).from();
            if (!kept.contains(pitch) && sounds(pitch.name(), step.to())) {
                return Optional.of(new Hold(pitch));
            }
        }
        return Optional.empty();
    }

    private static boolean sounds(NoteName name, List<Pitch> chord) {
        return chord.stream().map(Pitch::name).anyMatch(name::soundsLike);
    }

    private static Optional<Remedy> suspend(List<Pitch> pitches, List<Pitch> other, boolean first) {
        for (Chord chord : named(pitches)) {
            NoteName fourth = chord.root().plus(Interval.PERFECT_FOURTH);
            Optional<ChordKind> kind = withFourth(chord.kind());
            if (kind.isPresent() && sounds(fourth, other)) {
                return Optional.of(new Suspend(chord, new Chord(chord.root(), kind.get()), fourth, first));
            }
        }
        return Optional.empty();
    }

    private static Optional<ChordKind> withFourth(ChordKind kind) {
        return kind.holds(Interval.PERFECT_FIFTH)
                ? kind.interval(3).flatMap(kind::without).flatMap(bare -> bare.with(Interval.PERFECT_FOURTH))
                : Optional.empty();
    }

    /** The best name of the notes, or nothing. */
    private static List<Chord> named(List<Pitch> pitches) {
        List<NoteName> names = new ArrayList<>();
        pitches.stream().sorted().map(Pitch::name).distinct().forEach(names::add);
        return ChordNames.of(names).stream()
                .limit(1)
                .map(ChordNames.Name::chord)
                .toList();
    }

    private static Optional<Remedy> againstBass(MotionStep step) {
        return step.moves().get(0).isStill()
                ? Optional.empty()
                : Optional.of(new AgainstBass(step.moves().get(0).direction() > 0));
    }
}
