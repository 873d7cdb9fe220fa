package monochord.harmony.bass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.ChordFunction;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;

/**
 * A pedal: the tonic or the fifth degree held in the bass while the chords above change.
 *
 * <p>It begins and ends under chords that hold it, what lies between may rub against it, except a chord with a note a half
 * step above it; the tonic gives way to the bass of a closing dominant, the fifth degree is held up to a dominant, and
 * a row begins over its own root. Of all
 * such stretches the one with most new basses is taken, on the tonic if two are alike.
 *
 * <p>Source: Integrated Music Theory, lesson 9b, on the pedal point; what may stand above it in a band: common practice, no
 * source.
 */
final class PedalBass {
    private static final int DOMINANT = 5;

    private final Progression progression;
    private final List<Chord> chords;
    private final int degree;
    private final NoteName pedal;

    private PedalBass(Progression progression, int degree) {
        this.progression = progression;
        this.chords = progression.chords();
        this.degree = degree;
        this.pedal = progression.key().note(degree);
    }

    /** Chords from one up to another, both included. */
    private record PedalSpan(int first, int last, int changed) {
        boolean isLonger(PedalSpan other) {
            return changed > other.changed || changed == other.changed && last - first > other.last - other.first;
        }
    }

    static BassLine under(Progression progression) {
        return Stream.of(1, DOMINANT)
                .map(degree -> new PedalBass(progression, degree))
                .map(PedalBass::line)
                .flatMap(Optional::stream)
                .reduce((one, other) -> changed(other) > changed(one) ? other : one)
                .orElseGet(
                        () -> new BassLine(BassLine.BassStyle.PEDAL, progression, progression, List.of(), List.of()));
    }

    private static long changed(BassLine line) {
        List<Chord> before = line.before().chords();
        return IntStream.range(0, before.size())
                .filter(i -> !before.get(i).equals(line.chords().chords().get(i)))
                .count();
    }

    private Optional<BassLine> line() {
        PedalSpan best = new PedalSpan(0, 0, 0);
        for (int first = 0; first < chords.size(); first++) {
            for (int last = first + 1; last < chords.size() && bears(last); last++) {
                PedalSpan span = new PedalSpan(first, last, changed(first, last));
                best = isWhole(span) && span.isLonger(best) ? span : best;
            }
        }
        return best.changed() == 0 ? Optional.empty() : Optional.of(line(best));
    }

    private int changed(int first, int last) {
        return (int) chords.subList(first, last + 1).stream()
                .filter(chord -> !chord.bass().equals(pedal))
                .count();
    }

    private boolean isWhole(PedalSpan span) {
        boolean held =
                chords.get(span.first()).holds(pedal) && chords.get(span.last()).holds(pedal);
        boolean beginsAtHome = span.first() > 0 || chords.get(0).root().equals(pedal);
        boolean bears = IntStream.rangeClosed(span.first(), span.last()).allMatch(this::bears);
        return held && bears && beginsAtHome && (degree == 1 || isDominant(span.last()));
    }

    private boolean isDominant(int chord) {
        return Numeral.of(chords.get(chord), progression.key()).degree() == DOMINANT
                && chords.get(chord).root().equals(pedal);
    }

    private boolean bears(int chord) {
        return chords.get(chord).tones().stream()
                        .noneMatch(tone -> Math.floorMod(tone.pitchClass() - pedal.pitchClass(), 12) == 1)
                && !(degree == 1 && closes(chord));
    }

    /** Whether it is the dominant before the last chord, or that last chord. */
    private boolean closes(int chord) {
        int last = chords.size() - 1;
        boolean cadence = last > 0
                && ChordFunction.of(chords.get(last - 1), progression.key()).isDominantOfKey();
        return cadence && chord >= last - 1;
    }

    private BassLine line(PedalSpan span) {
        List<Bar> bars = new ArrayList<>();
        int at = -1;
        for (Bar bar : progression.bars()) {
            List<ChordEvent> slots = new ArrayList<>();
            for (ChordEvent slot : bar.slots()) {
                at += slot.held() ? 0 : 1;
                slots.add(at >= span.first() && at <= span.last() ? over(slot) : slot);
            }
            bars.add(new Bar(slots, false));
        }
        Progression over = new Progression(progression.key(), bars, progression.barred());
        return new BassLine(BassLine.BassStyle.PEDAL, progression, over, reasons(span), List.of());
    }

    private ChordEvent over(ChordEvent slot) {
        Chord chord = slot.chord().over(pedal);
        return new ChordEvent(chord, Numeral.of(chord, progression.key()), slot.shares(), slot.held());
    }

    private List<Phrase> reasons(PedalSpan span) {
        List<Chord> within = chords.subList(span.first(), span.last() + 1);
        List<Chord> rub =
                within.stream().filter(chord -> !chord.holds(pedal)).distinct().toList();
        List<Phrase> reasons = new ArrayList<>();
        reasons.add(Phrase.sentence(
                degree == 1
                        ? "{0}, the tonic, stays in the bass from {1} to {2}, which both hold it."
                        : "{0}, the fifth degree, stays in the bass from {1} to {2}, which both hold it.",
                pedal,
                within.get(0),
                within.get(within.size() - 1)));
        if (!rub.isEmpty()) {
            reasons.add(Phrase.counted(
                    rub.size(), "{0} rubs against it and goes on.", "{0} rub against it and go on.", Phrase.list(rub)));
        }
        if (degree == 1 && closes(chords.size() - 1)) {
            reasons.add(Phrase.sentence(
                    "The close, {0} {1}, keeps its own bass.",
                    chords.get(chords.size() - 2), chords.get(chords.size() - 1)));
        }
        return reasons;
    }
}
