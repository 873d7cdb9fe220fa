package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import monochord.harmony.ChordFunction;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.note.NoteName;

/** Puts into words what a change adds to the score, part by part. */
final class SubstitutionReasons {
    private final Key key;
    private final ChordOption from;
    private final ChordOption to;
    private final ChordOption before;
    private final ChordOption after;
    private final List<Reason> reasons = new ArrayList<>();

    /** Neighbours may be null. */
    SubstitutionReasons(Key key, ChordOption from, ChordOption to, ChordOption before, ChordOption after) {
        this.key = key;
        this.from = from;
        this.to = to;
        this.before = before;
        this.after = after;
    }

    /** @param friction what clashes with the tune weigh more than before */
    List<Reason> list(int friction) {
        origin();
        firm();
        kept();
        bass();
        resolved();
        moves();
        home();
        if (friction != 0) {
            reasons.add(new Reason(
                    -friction * RecolourWeights.CLASH,
                    friction > 0
                            ? Phrase.sentence("More of the tune clashes than over {0}.", from.chord)
                            : Phrase.sentence("Less of the tune clashes than over {0}.", from.chord)));
        }
        reasons.sort(Comparator.comparingInt(Reason::points).reversed());
        return reasons;
    }

    private void origin() {
        switch (to.colour) {
            case BORROWED -> borrowed();
            case APPLIED -> {}
            case SUSPENDED ->
                reasons.add(
                        new Reason(0, Phrase.sentence("The fourth waits in place of the third; the function stays.")));
            default -> reasons.add(new Reason(0, Phrase.sentence("Root and function stay; only a colour is added.")));
        }
    }

    private void borrowed() {
        Scale nearest = to.sources.isEmpty() ? key.parallel().scale() : to.sources.get(0);
        reasons.add(new Reason(RecolourWeights.BORROWED - ChordScore.farther(to), borrowed(nearest)));
    }

    private Phrase borrowed(Scale source) {
        Replacement replacement =
                Replacement.of(from, to, function(before), function(after)).orElseThrow();
        return switch (replacement) {
            case SAME_FUNCTION ->
                Phrase.sentence("{0} is borrowed from {1} and does what {2} did.", to.chord, source, from.chord);
            case BEFORE_DOMINANT ->
                Phrase.sentence(
                        "{0} is borrowed from {1} and takes the place of {2} before the dominant.",
                        to.chord, source, from.chord);
            case DECEPTIVE ->
                Phrase.sentence(
                        "{0} is borrowed from {1} and comes where {2} was expected.", to.chord, source, from.chord);
            case WITHOUT_LEADING_NOTE ->
                Phrase.sentence(
                        "{0} is borrowed from {1} and takes the place of {2} without a leading note.",
                        to.chord, source, from.chord);
            case LOWERED_THIRD ->
                Phrase.sentence(
                        "{0} is borrowed from {1}, the third degree lowered: a colour in place of {2}.",
                        to.chord, source, from.chord);
        };
    }

    private static Phrase leads(ChordOption one, ChordOption next) {
        return one.fallsToFifth(next)
                ? Phrase.sentence("{0} leads to {1} as its dominant.", one.chord, next.chord)
                : Phrase.sentence("{0} leads to {1} with the leading note.", one.chord, next.chord);
    }

    private static ChordFunction function(ChordOption beside) {
        return beside == null ? null : beside.function();
    }

    private void firm() {
        List<NoteName> firm = to.chord.tones().stream()
                .filter(tone -> isAdded(tone) && ChordOptions.isStable(tone, key))
                .toList();
        if (ChordScore.firm(to, key) > 0 && !firm.isEmpty()) {
            reasons.add(new Reason(
                    RecolourWeights.STABLE * ChordScore.firm(to, key),
                    Phrase.counted(
                            firm.size(),
                            "Its added {0} is the {1} of the key, steady in any chord.",
                            "Its added {0} are the {1} of the key, steady in any chord.",
                            Phrase.row(firm),
                            degrees(firm))));
        }
    }

    /** {@code fifth}, {@code fifth and the tonic}. */
    private Phrase degrees(List<NoteName> tones) {
        return tones.stream()
                .map(tone -> Phrase.inWords(key.degreeOf(tone)))
                .reduce((before, degree) -> Phrase.of("{0} and the {1}", before, degree))
                .orElse(Phrase.NOTHING);
    }

    private boolean isAdded(NoteName tone) {
        Chord triad = new Chord(to.chord.root(), to.chord.kind().triad());
        return to.isSuspendedFourth() ? to.chord.root().fifths() - tone.fifths() == 1 : !triad.holds(tone);
    }

    private void kept() {
        Set<NoteName> held = new LinkedHashSet<>();
        int points = kept(before, held) + kept(after, held);
        int old = common(before, from) + common(from, after);
        int now = common(before, to) + common(to, after);
        if (now > old) {
            reasons.add(new Reason(
                    points,
                    Phrase.counted(
                            held.size(),
                            "{0} is shared with the chords beside it.",
                            "{0} are shared with the chords beside it.",
                            row(held))));
        } else if (now < old) {
            reasons.add(new Reason(points, Phrase.sentence("Fewer tones are held from chord to chord.")));
        }
    }

    private int kept(ChordOption beside, Set<NoteName> held) {
        if (beside == null) {
            return 0;
        }
        to.chord.tones().stream().filter(beside.chord::holds).forEach(held::add);
        return RecolourWeights.KEPT * (beside.common(to) - beside.common(from));
    }

    private static int common(ChordOption one, ChordOption other) {
        return one == null || other == null ? 0 : one.common(other);
    }

    private void bass() {
        int now = halfSteps(before, to) + halfSteps(to, after);
        int points = RecolourWeights.BASS * (now - halfSteps(before, from) - halfSteps(from, after));
        if (points > 0) {
            List<NoteName> line = new ArrayList<>();
            if (halfSteps(before, to) > 0) {
                line.add(before.chord.bass());
            }
            line.add(to.chord.bass());
            if (halfSteps(to, after) > 0) {
                line.add(after.chord.bass());
            }
            reasons.add(new Reason(points, Phrase.sentence("The bass moves by half step: {0}.", Phrase.row(line))));
        } else if (points < 0) {
            reasons.add(new Reason(points, Phrase.sentence("The bass no longer moves by half step.")));
        }
    }

    private static int halfSteps(ChordOption one, ChordOption next) {
        return one != null && next != null && one.bassMovesByHalfStep(next) ? 1 : 0;
    }

    private void resolved() {
        if (after == null) {
            return;
        }
        int points = RecolourWeights.RESOLVES
                * (to.resolved(after)
                        - from.resolved(after)
                        + (before == null ? 0 : before.resolved(to) - before.resolved(from)));
        if (points > 0) {
            reasons.add(new Reason(
                    points,
                    Phrase.sentence("Its tone from outside the key goes on by half step into {0}.", after.chord)));
        }
    }

    private void moves() {
        moves(before, to, before, from);
        moves(to, after, from, after);
    }

    private void moves(ChordOption one, ChordOption next, ChordOption oldOne, ChordOption oldNext) {
        if (one == null || next == null) {
            return;
        }
        boolean newly = !TransitionScore.isIdiom(oldOne, oldNext) && TransitionScore.isIdiom(one, next);
        if (newly) {
            reasons.add(new Reason(RecolourWeights.IDIOM, idiom(one, next)));
        } else if (TransitionScore.isIdiom(oldOne, oldNext) && !TransitionScore.isIdiom(one, next)) {
            reasons.add(new Reason(
                    -RecolourWeights.IDIOM,
                    Phrase.sentence("{0} no longer moves to {1}.", oldOne.chord, oldNext.chord)));
        }
        if (TransitionScore.leads(one, next) && !TransitionScore.leads(oldOne, oldNext)) {
            reasons.add(new Reason(
                    RecolourWeights.LEADS,
                    one.fallsToFifth(next)
                            ? Phrase.sentence("{0} leads to {1} as its dominant.", one.chord, next.chord)
                            : Phrase.sentence("{0} leads to {1} with the leading note.", one.chord, next.chord)));
        } else if (TransitionScore.leads(oldOne, oldNext) && !TransitionScore.leads(one, next)) {
            reasons.add(new Reason(
                    -RecolourWeights.LEADS,
                    Phrase.sentence("{0} no longer leads to {1}.", oldOne.chord, oldNext.chord)));
        }
    }

    private void home() {
        if (ChordScore.leavesHome(from, to)) {
            reasons.add(new Reason(-RecolourWeights.HOME, Phrase.sentence("The tonic is not heard there any more.")));
        }
        if (isCrowded(before, to) || isCrowded(to, after)) {
            reasons.add(new Reason(
                    -RecolourWeights.CROWDED, Phrase.sentence("It stands beside a chord that is much like it.")));
        }
    }

    private static boolean isCrowded(ChordOption one, ChordOption next) {
        return one != null && next != null && TransitionScore.isCrowded(one, next);
    }

    private static Phrase idiom(ChordOption one, ChordOption next) {
        if (TransitionScore.settles(one, next)) {
            return Phrase.sentence("The suspension settles on its own root, {0}.", next.chord);
        } else if (TransitionScore.isWalkUp(one, next)) {
            return Phrase.sentence("{0} to {1} walks up by whole steps to the tonic.", one.numeral, next.numeral);
        }
        return TransitionScore.isMinorPlagal(one, next)
                ? Phrase.sentence(
                        "{0} to {1} is the dark plagal ending: the lowered sixth falls to the fifth.",
                        one.numeral, next.numeral)
                : Phrase.sentence("{0} to {1} is a move many songs know.", one.numeral, next.numeral);
    }

    private static Phrase row(Set<NoteName> notes) {
        return Phrase.row(new ArrayList<>(notes));
    }
}
