package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.motion.VoiceMove;
import monochord.harmony.voicing.RootPositionComparison.HandMoves;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** Puts an {@link RootPositionComparison} into sentences, as a teacher would say it at the keyboard. */
public final class VoicingExplanation {
    private static final int WHOLE_STEP = 2;
    private static final Phrase.Forms MOVED =
            new Phrase.Forms("{0} half step moved", "{0} half steps moved", "no half steps moved");
    private static final Phrase.Forms PARALLELS = new Phrase.Forms(
            "{0} parallel fifth or octave", "{0} parallel fifths or octaves", "no parallel fifths or octaves");
    private static final Phrase.Forms HELD = new Phrase.Forms("{0} note held", "{0} notes held", "no notes held");

    private final RootPositionComparison comparison;

    public VoicingExplanation(RootPositionComparison comparison) {
        this.comparison = comparison;
    }

    /** One sentence for each change; a change that comes again is told once. */
    public List<Phrase> changes() {
        LinkedHashSet<Phrase> told = new LinkedHashSet<>();
        comparison.changes().forEach(change -> told.add(change(change)));
        return List.copyOf(told);
    }

    private Phrase change(HandMoves change) {
        List<VoiceMove> all =
                Stream.concat(change.left().stream(), change.right().stream()).toList();
        if (all.stream().allMatch(VoiceMove::isStill)) {
            return Phrase.sentence("{0} to {1}: nothing moves.", change.from(), change.to());
        }
        List<Phrase> parts = new ArrayList<>();
        held(change, all).ifPresent(parts::add);
        parts.addAll(hand(change.left(), true, !hasBassPlayer()));
        parts.addAll(hand(change.right(), false, false));
        return Phrase.sentence("{0} to {1}: {2}.", change.from(), change.to(), Phrase.joined("; ", parts));
    }

    private static Optional<Phrase> held(HandMoves change, List<VoiceMove> all) {
        List<VoiceMove> still = all.stream().filter(VoiceMove::isStill).toList();
        if (!change.right().isEmpty() && still.containsAll(change.right())) {
            List<VoiceMove> below =
                    change.left().stream().filter(VoiceMove::isStill).toList();
            return Optional.of(
                    below.isEmpty()
                            ? Phrase.of("the right hand does not move")
                            : Phrase.of("the right hand does not move, {0} too", stay(below)));
        }
        return still.isEmpty() ? Optional.empty() : Optional.of(stay(still));
    }

    private static Phrase stay(List<VoiceMove> still) {
        List<Pitch> pitches = still.stream().map(VoiceMove::to).distinct().toList();
        return Phrase.counted(pitches.size(), "{0} stays", "{0} stay", Phrase.list(pitches));
    }

    private boolean hasBassPlayer() {
        return !comparison.way().task().style().choice().hasBass();
    }

    private static List<Phrase> hand(List<VoiceMove> hand, boolean left, boolean hasBass) {
        List<VoiceMove> moving = hand.stream().filter(move -> !move.isStill()).toList();
        boolean together = moving.size() > 1
                && moving.size() == hand.size()
                && moving.stream().mapToInt(VoiceMove::semitones).distinct().count() == 1;
        if (together) {
            return List.of(slides(moving.get(0), left));
        }
        List<Phrase> parts = new ArrayList<>();
        boolean bass = left && hasBass && !moving.isEmpty() && moving.get(0) == hand.get(0);
        if (bass) {
            parts.add(bassGoes(moving.get(0)));
        }
        List<Phrase> others = moving.stream()
                .skip(bass ? 1 : 0)
                .map(move -> Phrase.of("{0} to {1}", move.from(), move.to()))
                .toList();
        if (!others.isEmpty()) {
            parts.add(Phrase.joined(", ", others));
        }
        return parts;
    }

    private static Phrase slides(VoiceMove move, boolean left) {
        Phrase distance = distance(move);
        if (left) {
            return move.direction() > 0
                    ? Phrase.of("the left hand slides up {0}", distance)
                    : Phrase.of("the left hand slides down {0}", distance);
        }
        return move.direction() > 0
                ? Phrase.of("the right hand slides up {0}", distance)
                : Phrase.of("the right hand slides down {0}", distance);
    }

    private static Phrase bassGoes(VoiceMove move) {
        return move.direction() > 0
                ? Phrase.of("the bass goes up {0}", distance(move))
                : Phrase.of("the bass goes down {0}", distance(move));
    }

    private static Phrase distance(VoiceMove move) {
        int halfSteps = Math.abs(move.semitones());
        if (halfSteps <= WHOLE_STEP) {
            return halfSteps == 1 ? Phrase.of("a half step") : Phrase.of("a whole step");
        }
        return MusicWords.oneNumber(move.interval().number());
    }

    /** The numbers next to those of the plain version, and where the plain version is flattest. */
    public List<Phrase> comparison() {
        List<Phrase> said = new ArrayList<>();
        said.add(Phrase.sentence("In all {0}.", numbers(comparison.tally()))
                .then(Phrase.sentence("Every chord in root position: {0}.", numbers(comparison.plainTally()))));
        flattest().ifPresent(change -> said.add(avoided(change)));
        return said;
    }

    private static Phrase numbers(MovementCount tally) {
        return Phrase.of(
                "{0}, {1}, {2}",
                Phrase.counted(tally.moved(), MOVED, tally.moved()),
                parallels(tally),
                Phrase.counted(tally.held(), HELD, tally.held()));
    }

    private static Phrase parallels(MovementCount tally) {
        Phrase all = Phrase.counted(tally.parallels(), PARALLELS, tally.parallels());
        return tally.inLeftHand() == 0
                ? all
                : tally.inLeftHand() == tally.parallels()
                        ? Phrase.of("{0}, all in the left hand", all)
                        : Phrase.of("{0}, {1} of them in the left hand", all, tally.inLeftHand());
    }

    /** The change at which the plain version has most parallels more than this one. */
    private Optional<HandMoves> flattest() {
        return comparison.changes().stream()
                .max(Comparator.comparingInt(VoicingExplanation::saved).thenComparing(this::isBorrowed))
                .filter(change -> saved(change) > 0);
    }

    private static int saved(HandMoves change) {
        return change.plainTally().parallels() - change.tally().parallels();
    }

    private static Phrase avoided(HandMoves change) {
        int plain = change.plainTally().parallels();
        return Phrase.sentence(
                "Avoided from {0} to {1}: in root position {2} of voices would go in parallel, here {3}.",
                change.from(),
                change.to(),
                Phrase.counted(plain, "{0} pair", "{0} pairs", plain),
                left(change.tally().parallels()));
    }

    private static Phrase left(int parallels) {
        return switch (parallels) {
            case 0 -> Phrase.of("none does");
            case 1 -> Phrase.of("one does");
            default -> Phrase.of("{0} do", parallels);
        };
    }

    /** What sounds though no symbol names it, and what a symbol names and does not sound; nothing if all is as written. */
    public List<Phrase> departures() {
        return new Departures(comparison.way()).said();
    }

    /** Why most can stay at one change: what each held note is in either chord. */
    public Optional<Phrase> reason() {
        return comparison.changes().stream()
                .filter(change -> !change.from().equals(change.to()))
                .max(Comparator.<HandMoves>comparingInt(change -> change.tally().held())
                        .thenComparing(this::isBorrowed))
                .filter(change -> change.tally().held() > 0)
                .map(VoicingExplanation::reason);
    }

    /** Whether the change leads out of the key: where two are as telling, that one is told. */
    private boolean isBorrowed(HandMoves change) {
        return !comparison.way().task().key().isOwn(change.to());
    }

    private static Phrase reason(HandMoves change) {
        List<Phrase> roles = Stream.concat(change.left().stream(), change.right().stream())
                .filter(VoiceMove::isStill)
                .map(move -> move.to().name())
                .distinct()
                .map(name -> Phrase.of(
                        "{0} is the {1} of {2} and the {3} of {4}",
                        name, role(name, change.from()), change.from(), role(name, change.to()), change.to()))
                .toList();
        return Phrase.counted(roles.size(), "Why it stays: {0}.", "Why they stay: {0}.", Phrase.joined("; ", roles));
    }

    /** What a note is in a chord: root, third, bass; a ninth where it was added. */
    static Phrase role(NoteName name, Chord chord) {
        return chord.kind().intervals().stream()
                .filter(interval -> chord.root().plus(interval).soundsLike(name))
                .findFirst()
                .or(() -> name.equals(chord.bass()) ? Optional.empty() : Optional.of(added(name, chord)))
                .map(VoicingExplanation::role)
                .orElse(Phrase.of("bass"));
    }

    /** Where a tone from outside the chord stands in its stack: a second is a ninth, and so on. */
    private static Interval added(NoteName name, Chord chord) {
        return Interval.simple(name.fifths() - chord.root().fifths()).plus(Interval.OCTAVE);
    }

    private static Phrase role(Interval interval) {
        return interval.number() == 1 ? Phrase.of("root") : MusicWords.number(interval.number());
    }
}
