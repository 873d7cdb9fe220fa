package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.harmony.ChordFunction;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.Scale;
import monochord.theory.Signs;

/** Puts into words what a change adds to the score, part by part. */
final class Reasons {
    private final Key key;
    private final ChordOption from;
    private final ChordOption to;
    private final ChordOption before;
    private final ChordOption after;
    private final List<Reason> reasons = new ArrayList<>();

    /** Neighbours may be null. */
    Reasons(Key key, ChordOption from, ChordOption to, ChordOption before, ChordOption after) {
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
            String more = friction > 0 ? "More of the tune clashes" : "Less of the tune clashes";
            reasons.add(new Reason(-friction * RecolourWeights.CLASH, more + " than over " + name(from) + "."));
        }
        reasons.sort(Comparator.comparingInt(Reason::points).reversed());
        return reasons;
    }

    private static String name(ChordOption shade) {
        return shade.chord.write(Signs.MUSIC);
    }

    private void origin() {
        switch (to.colour) {
            case BORROWED -> borrowed();
            case APPLIED -> {}
            case SUSPENDED -> reasons.add(new Reason(0, "The fourth waits in place of the third; the function stays."));
            default -> reasons.add(new Reason(0, "Root and function stay; only a colour is added."));
        }
    }

    private void borrowed() {
        Scale nearest = to.sources.isEmpty() ? key.parallel().scale() : to.sources.get(0);
        reasons.add(new Reason(
                RecolourWeights.BORROWED - ChordScore.farther(to),
                borrowed(to.chord, nearest, from.chord).toString()));
    }

    private Phrase borrowed(Chord chord, Scale source, Chord instead) {
        Replacement replacement =
                Replacement.of(from, to, function(before), function(after)).orElseThrow();
        return switch (replacement) {
            case SAME_FUNCTION ->
                Phrase.sentence("{0} is borrowed from {1} and does what {2} did.", chord, source, instead);
            case BEFORE_DOMINANT ->
                Phrase.sentence(
                        "{0} is borrowed from {1} and takes the place of {2} before the dominant.",
                        chord, source, instead);
            case DECEPTIVE ->
                Phrase.sentence("{0} is borrowed from {1} and comes where {2} was expected.", chord, source, instead);
            case WITHOUT_LEADING_NOTE ->
                Phrase.sentence(
                        "{0} is borrowed from {1} and takes the place of {2} without a leading note.",
                        chord, source, instead);
            case LOWERED_THIRD ->
                Phrase.sentence(
                        "{0} is borrowed from {1}, the third degree lowered: a colour in place of {2}.",
                        chord, source, instead);
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
            String degrees =
                    firm.stream().map(tone -> key.degreeOf(tone).inWords()).collect(Collectors.joining(" and the "));
            reasons.add(new Reason(
                    RecolourWeights.STABLE * ChordScore.firm(to, key),
                    "Its added " + row(firm) + (firm.size() == 1 ? " is the " : " are the ") + degrees
                            + " of the key, steady in any chord."));
        }
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
            String verb = held.size() == 1 ? " is" : " are";
            reasons.add(new Reason(points, row(held) + verb + " shared with the chords beside it."));
        } else if (now < old) {
            reasons.add(new Reason(points, "Fewer tones are held from chord to chord."));
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
            Set<NoteName> line = new LinkedHashSet<>();
            if (halfSteps(before, to) > 0) {
                line.add(before.chord.bass());
            }
            line.add(to.chord.bass());
            String end = halfSteps(to, after) > 0 ? " " + after.chord.bass().write(Signs.MUSIC) : "";
            reasons.add(new Reason(points, "The bass moves by half step: " + row(line) + end + "."));
        } else if (points < 0) {
            reasons.add(new Reason(points, "The bass no longer moves by half step."));
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
            reasons.add(
                    new Reason(points, "Its tone from outside the key goes on by half step into " + name(after) + "."));
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
            reasons.add(
                    new Reason(-RecolourWeights.IDIOM, name(oldOne) + " no longer moves to " + name(oldNext) + "."));
        }
        if (TransitionScore.leads(one, next) && !TransitionScore.leads(oldOne, oldNext)) {
            reasons.add(new Reason(RecolourWeights.LEADS, leads(one, next).toString()));
        } else if (TransitionScore.leads(oldOne, oldNext) && !TransitionScore.leads(one, next)) {
            reasons.add(
                    new Reason(-RecolourWeights.LEADS, name(oldOne) + " no longer leads to " + name(oldNext) + "."));
        }
    }

    private void home() {
        if (ChordScore.leavesHome(from, to)) {
            reasons.add(new Reason(-RecolourWeights.HOME, "The tonic is not heard there any more."));
        }
        if (isCrowded(before, to) || isCrowded(to, after)) {
            reasons.add(new Reason(-RecolourWeights.CROWDED, "It stands beside a chord that is much like it."));
        }
    }

    private static boolean isCrowded(ChordOption one, ChordOption next) {
        return one != null && next != null && TransitionScore.isCrowded(one, next);
    }

    private static String idiom(ChordOption one, ChordOption next) {
        String move = one.numeral.write(Signs.MUSIC) + " to " + next.numeral.write(Signs.MUSIC);
        return TransitionScore.settles(one, next)
                ? "The suspension settles on its own root, " + name(next) + "."
                : TransitionScore.isWalkUp(one, next)
                        ? move + " walks up by whole steps to the tonic."
                        : TransitionScore.isMinorPlagal(one, next)
                                ? move + " is the dark plagal ending: the lowered sixth falls to the fifth."
                                : move + " is a move many songs know.";
    }

    private static String row(Iterable<NoteName> notes) {
        List<String> written = new ArrayList<>();
        notes.forEach(note -> written.add(note.write(Signs.MUSIC)));
        return String.join(" ", written);
    }
}
