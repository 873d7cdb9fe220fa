package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Borrowing;
import monochord.harmony.ChordEvent;
import monochord.harmony.ChordFunction;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Every chord that could stand in the place of one, the one that stands there first. */
final class ChordOptions {
    private static final int FARTHEST = Mode.IONIAN.distance(Mode.AEOLIAN);
    private static final Interval NINTH = Interval.MAJOR_SECOND.plus(Interval.OCTAVE);
    private static final ChordKind SUSPENDED = ChordKind.parse("sus4");
    private static final ChordKind SEVENTH_SUSPENDED = ChordKind.parse("7sus4");

    private final Key key;
    private final List<ChordOption> borrowed;

    ChordOptions(Key key) {
        this.key = key;
        this.borrowed = borrowed(key);
    }

    private static List<ChordOption> borrowed(Key key) {
        List<ChordOption> all = new ArrayList<>();
        for (Borrowing.Borrowed one : Borrowing.table(key)) {
            if (isNear(one, key)) {
                all.add(new ChordOption(one.chord(), one.numeral(), Colour.BORROWED, key));
                withNinth(one.chord())
                        .filter(chord -> addsStable(chord, one.chord(), key))
                        .ifPresent(chord ->
                                all.add(new ChordOption(chord, Numeral.onDegree(chord, key), Colour.BORROWED, key)));
            }
        }
        return all;
    }

    /** From a mode at most as far as minor is from major, from harmonic minor, or the major chord on the lowered second. */
    private static boolean isNear(Borrowing.Borrowed one, Key key) {
        return one.chord().equals(new Chord(key.note(Degree.of(2, -1)), ChordKind.MAJOR))
                || one.sources().stream().anyMatch(source -> isNear(source, key));
    }

    private static boolean isNear(Scale source, Key key) {
        return source.kind().equals(ScaleKind.HARMONIC_MINOR)
                || Stream.of(Mode.values())
                        .filter(mode -> mode.distance(key.mode()) <= FARTHEST)
                        .anyMatch(mode -> ScaleKind.of(mode).equals(source.kind()));
    }

    /**
     * @param before the chord before it, or null
     * @param next the chord behind it, or null
     */
    List<ChordOption> of(ChordEvent slot, ChordEvent before, ChordEvent next) {
        Map<Chord, ChordOption> shades = new LinkedHashMap<>();
        Chord chord = slot.chord();
        ChordOption plain = new ChordOption(chord, slot.numeral(), Colour.PLAIN, key);
        shades.put(chord, plain);
        suspended(chord).forEach(one -> add(shades, one, Colour.SUSPENDED));
        enriched(chord).forEach(one -> add(shades, one, Colour.ENRICHED));
        if (next != null) {
            applied(chord, next.chord()).ifPresent(one -> shades.putIfAbsent(one.chord, one));
        }
        ChordFunction from = function(before);
        ChordFunction to = function(next);
        for (ChordOption one : borrowed) {
            if (Replacement.of(plain, one, from, to).isPresent()) {
                shades.putIfAbsent(one.chord, one);
            }
        }
        return List.copyOf(shades.values());
    }

    private ChordFunction function(ChordEvent slot) {
        return slot == null ? null : ChordFunction.of(slot.chord(), key);
    }

    private void add(Map<Chord, ChordOption> shades, Chord chord, Colour colour) {
        shades.putIfAbsent(chord, new ChordOption(chord, Numeral.onDegree(chord, key), colour, key));
    }

    private static boolean isTriad(Chord chord) {
        ChordKind kind = chord.kind();
        return kind.equals(ChordKind.MAJOR) || kind.equals(ChordKind.MINOR);
    }

    private Stream<Chord> suspended(Chord chord) {
        boolean seventh = chord.kind().equals(ChordKind.DOMINANT_SEVENTH);
        boolean held = key.holds(chord.root().plus(Interval.PERFECT_FOURTH));
        if (!held || !seventh && !isTriad(chord)) {
            return Stream.empty();
        }
        return Stream.of(new Chord(chord.root(), seventh ? SEVENTH_SUSPENDED : SUSPENDED))
                .filter(one -> !chord.isInverted());
    }

    /** The seventh and the ninth that the key has, where they stand firm in it; on the fifth degree the seventh always. */
    private Stream<Chord> enriched(Chord chord) {
        if (!isTriad(chord)) {
            return Stream.empty();
        }
        boolean dominant = key.degreeOf(chord.root()).equals(Degree.of(5, 0))
                && chord.kind().equals(ChordKind.MAJOR);
        return Stream.concat(
                        Stream.of(Interval.MINOR_SEVENTH, Interval.MAJOR_SEVENTH)
                                .flatMap(seventh -> with(chord, seventh).stream()),
                        withNinth(chord).stream())
                .filter(one -> one.tones().stream().allMatch(tone -> key.holds(tone) || chord.holds(tone)))
                .filter(one ->
                        addsStable(one, chord, key) || dominant && one.kind().equals(ChordKind.DOMINANT_SEVENTH));
    }

    private static Optional<Chord> with(Chord chord, Interval tone) {
        return chord.kind().with(tone).map(kind -> new Chord(chord.root(), kind, chord.bass()));
    }

    private static Optional<Chord> withNinth(Chord chord) {
        return isTriad(chord) ? with(chord, NINTH) : Optional.empty();
    }

    /** Whether each tone that {@code rich} has beyond {@code poor} is the first, third or fifth of the key. */
    private static boolean addsStable(Chord rich, Chord poor, Key key) {
        return rich.tones().stream().filter(tone -> !poor.holds(tone)).allMatch(tone -> isStable(tone, key));
    }

    static boolean isStable(NoteName tone, Key key) {
        return tone.equals(key.note(1)) || tone.equals(key.note(3)) || tone.equals(key.note(5));
    }

    /** The dominant seventh on the same root, where the next root lies a fifth below and carries a chord of the key. */
    private Optional<ChordOption> applied(Chord chord, Chord next) {
        boolean falls = chord.root().fifths() - next.root().fifths() == 1;
        Chord dominant = new Chord(chord.root(), ChordKind.DOMINANT_SEVENTH, chord.bass());
        Numeral numeral = Numeral.of(dominant, key);
        boolean isNew = !chord.equals(dominant) && dominant.tones().contains(chord.bass());
        return falls && isNew && isTriad(new Chord(next.root(), next.kind().triad())) && numeral.target() != null
                ? Optional.of(new ChordOption(dominant, numeral, Colour.APPLIED, key))
                : Optional.empty();
    }
}
