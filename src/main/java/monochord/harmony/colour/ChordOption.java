package monochord.harmony.colour;

import java.util.List;
import monochord.harmony.Borrowing;
import monochord.harmony.ChordFunction;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.TriadQuality;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.ToneSet;

/**
 * One chord that could stand in a place of the progression, with what the score asks of it. Its tones are a {@link
 * ToneSet} seen from the tonic.
 */
final class ChordOption {
    private static final int FIFTHS_OF_HALF_STEP = 5;

    final Chord chord;
    final Numeral numeral;
    final Colour colour;
    final long tones;
    /** Tones the key does not have. */
    final long outside;
    /** The root as a degree of the major scale. */
    final Degree root;

    /** Where a borrowed chord comes from, nearest first. */
    final List<Scale> sources;

    private final int bassKey;
    private final Key key;
    private ChordFunction function;

    ChordOption(Chord chord, Numeral numeral, Colour colour, Key key) {
        this.chord = chord;
        this.key = key;
        this.numeral = numeral;
        this.colour = colour;
        this.root = key.degreeOf(chord.root());
        this.bassKey = chord.bass().pitchClass();
        this.sources = colour == Colour.BORROWED ? Borrowing.borrowedFrom(chord, key) : List.of();
        long all = 0;
        long foreign = 0;
        for (NoteName tone : chord.tones()) {
            long bit = ToneSet.bit(key.degreeOf(tone).fifths());
            all |= bit;
            foreign |= key.holds(tone) ? 0 : bit;
        }
        this.tones = all;
        this.outside = foreign;
    }

    /** What the chord does, found out when it is first asked. */
    ChordFunction function() {
        if (function == null) {
            function = ChordFunction.of(chord, key);
        }
        return function;
    }

    boolean isPlain() {
        return colour == Colour.PLAIN;
    }

    /** Tones that both have, at most as many as count. */
    int common(ChordOption other) {
        return Math.min(RecolourWeights.MOST_KEPT, Long.bitCount(tones & other.tones));
    }

    /** Tones from outside the key that have a tone of {@code next} a half step away, on another letter. */
    int resolved(ChordOption next) {
        long near = next.tones << FIFTHS_OF_HALF_STEP | next.tones >>> FIFTHS_OF_HALF_STEP;
        return Long.bitCount(outside & near & ~next.tones);
    }

    boolean bassMovesByHalfStep(ChordOption next) {
        int up = Math.floorMod(next.bassKey - bassKey, 12);
        return up == 1 || up == 11;
    }

    boolean isDominantSeventh() {
        ChordKind kind = chord.kind();
        return kind.quality() == TriadQuality.MAJOR && kind.holds(Interval.MINOR_SEVENTH);
    }

    boolean isSuspendedFourth() {
        return chord.kind().quality() == TriadQuality.SUSPENDED && chord.kind().holds(Interval.PERFECT_FOURTH);
    }

    boolean hasMinorThird() {
        return chord.kind().holds(Interval.MINOR_THIRD);
    }

    boolean hasMajorThird() {
        return chord.kind().holds(Interval.MAJOR_THIRD);
    }

    /** Whether the root falls a fifth to the next one. */
    boolean fallsToFifth(ChordOption next) {
        return root.fifths() - next.root.fifths() == 1;
    }
}
