package monochord.harmony.after;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Borrowing;
import monochord.harmony.ChordFunction;
import monochord.harmony.HarmonicFunction;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Numeral.Form;
import monochord.theory.Scale;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * Why one chord leads to another: a tendency that has to resolve, a {@link CommonProgression}, or what can be seen from the tones.
 *
 * <p>Source for applied chords and augmented sixths: Open Music Theory (2014), pages "appliedChords" and
 * "augmentedSixthChords"; a suspension as the way back is common practice, no source.
 *
 * @param weight from 1 to 8
 * @param said a clause
 */
record Reason(int weight, Phrase said) {
    static final int MUST = 8;
    private static final int SUSPENDED = 5;
    private static final int LEADS = 2;
    private static final int SEEN = 1;

    static Optional<Reason> of(Numeral from, Numeral to, Key key) {
        return resolving(from, to, key)
                .or(() -> suspending(from, to, key))
                .or(() -> cadential(from, to, key))
                .or(() -> habit(from, to, key))
                .or(() -> applied(to, key))
                .or(() -> seen(from, to, key));
    }

    private static Optional<Reason> habit(Numeral from, Numeral to, Key key) {
        boolean stays = sharedMode(new ChordMove(from.in(key), to.in(key)), key).isPresent();
        return CommonProgression.of(from, to, key)
                .map(habit -> new Reason(
                        habit.weight(), stays ? Phrase.of("it stays borrowed: {0}", habit.reason()) : habit.reason()));
    }

    static Reason ofSongs(SongCounts.Backing backing) {
        return new Reason(
                SEEN,
                Phrase.of(
                        "no rule of thumb leads there, but {0} go there",
                        backing.collection().idiom()));
    }

    /** Where a chord with a tendency of its own has to go: a suspended chord, an applied one, an augmented sixth. */
    static List<Numeral> resolutions(Numeral from, Key key) {
        List<Numeral> goals = new ArrayList<>();
        Chord chord = from.in(key);
        if (isSuspended(chord)) {
            resolved(chord).map(goal -> Numeral.of(goal, key)).ifPresent(goals::add);
        }
        from.appliedTo().ifPresent(goals::add);
        if (isAugmentedSixth(from) || from.form() == Form.CADENTIAL) {
            goals.add(Numeral.parse("V"));
        }
        return goals;
    }

    private static boolean isAugmentedSixth(Numeral numeral) {
        return numeral.form() == Form.ITALIAN || numeral.form() == Form.FRENCH || numeral.form() == Form.GERMAN;
    }

    private static boolean isSuspended(Chord chord) {
        ChordKind kind = chord.kind();
        return kind.interval(3).isEmpty()
                && (kind.interval(4).isPresent() || kind.interval(2).isPresent());
    }

    /** The suspended chord with its third, major as on a dominant. */
    private static Optional<Chord> resolved(Chord chord) {
        return chord.kind()
                .without(chord.kind().holds(Interval.PERFECT_FOURTH) ? Interval.PERFECT_FOURTH : Interval.MAJOR_SECOND)
                .flatMap(kind -> kind.with(Interval.MAJOR_THIRD))
                .map(kind -> new Chord(chord.root(), kind));
    }

    private static Optional<Reason> resolving(Numeral from, Numeral to, Key key) {
        Chord chord = from.in(key);
        Chord next = to.in(key);
        if (isSuspended(chord) && resolved(chord).filter(next::equals).isPresent()) {
            return must(settling(chord, next.root().plus(Interval.MAJOR_THIRD)));
        }
        if (from.appliedTo().map(goal -> goal.in(key)).filter(next::equals).isPresent()) {
            return must(
                    from.degree() == 5
                            ? Phrase.of("it is the dominant of {0} and resolves there", next)
                            : Phrase.of("it is the leading-note chord of {0} and resolves there", next));
        }
        boolean dominant = to.target() == null && next.equals(Numeral.parse("V").in(key));
        if (dominant && isAugmentedSixth(from)) {
            return must(Phrase.of(
                    "{0} and {1} open by half steps onto {2}",
                    key.note(Degree.of(6, -1)), key.note(Degree.of(4, 1)), next.root()));
        }
        return dominant && from.form() == Form.CADENTIAL
                ? must(Phrase.of("sixth and fourth above the bass fall to fifth and third"))
                : Optional.empty();
    }

    private static Optional<Reason> must(Phrase said) {
        return Optional.of(new Reason(MUST, said));
    }

    private static Phrase settling(Chord suspended, NoteName third) {
        return suspended.kind().holds(Interval.PERFECT_FOURTH)
                ? Phrase.of("the suspended fourth falls to its third, {0}", third)
                : Phrase.of("the second rises to its third, {0}", third);
    }

    /** The tonic, held over from the chord before as the fourth of the suspended dominant. */
    private static Optional<Reason> suspending(Numeral from, Numeral to, Key key) {
        Chord next = to.in(key);
        boolean suspended = isSuspended(next) && next.root().equals(key.note(5));
        if (!suspended) {
            return Optional.empty();
        }
        boolean held = from.in(key).holds(key.tonic()) && !from.in(key).root().equals(key.tonic());
        return held
                ? Optional.of(new Reason(
                        SUSPENDED,
                        Phrase.of(
                                "back by a suspension: {0} stays as its fourth, then falls to {1}",
                                key.tonic(), key.note(Degree.of(7, 0)))))
                : Optional.empty();
    }

    /** The six-four before the dominant, from the chords that prepare it. */
    private static Optional<Reason> cadential(Numeral from, Numeral to, Key key) {
        HarmonicFunction function = ChordFunction.of(from.in(key), key).main();
        boolean prepares = to.form() == Form.CADENTIAL && function == HarmonicFunction.SUBDOMINANT;
        return prepares
                ? Optional.of(new Reason(
                        LEADS, Phrase.of("the six-four over the dominant's bass delays it, as classical cadences do")))
                : Optional.empty();
    }

    private static Optional<Reason> applied(Numeral to, Key key) {
        return to.appliedTo().map(goal -> {
            List<NoteName> outside = Borrowing.borrowed(to.in(key), key).changed().stream()
                    .map(key::note)
                    .toList();
            return new Reason(
                    LEADS, Phrase.of("it brings {0} and leads on to {1}, {2}", all(outside), goal.in(key), goal));
        });
    }

    /** {@code C♯}, {@code C♯ and F♯ and A♯}. */
    private static Phrase all(List<NoteName> notes) {
        return notes.stream()
                .map(note -> Phrase.of("{0}", note))
                .reduce((before, note) -> Phrase.of("{0} and {1}", before, note))
                .orElse(Phrase.NOTHING);
    }

    /** What the tones say where no habit does: the circle, a shared mode, tones that stay. */
    private static Optional<Reason> seen(Numeral from, Numeral to, Key key) {
        ChordMove move = new ChordMove(from.in(key), to.in(key));
        if (to.form() != Form.DEGREE || from.target() != null && !key.isOwn(move.to())) {
            return Optional.empty();
        }
        if (move.rootUp().equals(Interval.PERFECT_FOURTH)) {
            return Optional.of(new Reason(LEADS, Phrase.of("the root falls a fifth, the strongest step there is")));
        }
        Optional<Scale> mode = sharedMode(move, key);
        if (mode.isPresent() && move.held().size() >= 1) {
            return Optional.of(new Reason(SEEN, Phrase.of("it stays borrowed, from {0}", mode.get())));
        }
        return move.held().size() >= 2 ? Optional.of(new Reason(SEEN, Phrase.of("two tones stay"))) : Optional.empty();
    }

    private static Optional<Scale> sharedMode(ChordMove move, Key key) {
        List<Scale> others = Borrowing.borrowedFrom(move.to(), key);
        return Borrowing.borrowedFrom(move.from(), key).stream()
                .filter(others::contains)
                .findFirst();
    }
}
