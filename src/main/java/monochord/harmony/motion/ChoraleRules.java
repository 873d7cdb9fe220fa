package monochord.harmony.motion;

import java.util.List;
import monochord.harmony.motion.Finding.FindingKind;
import monochord.harmony.motion.Finding.Weight;

/** The textbook rules of {@link Strictness#CHORALE}, one method each. */
final class ChoraleRules extends MotionRules {
    private static final int AUGMENTED_SECOND = 3;
    private static final int AUGMENTED_FOURTH = 6;

    /** Letters moved in a fourth. */
    private static final int FOURTH = 3;

    ChoraleRules() {
        super(Weight.FAULT);
    }

    @Override
    void change(MotionStep step, int at) {
        for (VoicePair pair : step.pairs()) {
            runs(pair, at);
            unequalFifths(pair, at);
        }
        step.outer().ifPresent(pair -> directs(pair, at));
        overlaps(step, at);
        step.moves().forEach(move -> augmentedSteps(move, at));
    }

    private void runs(VoicePair pair, int at) {
        switch (pair.parallel()) {
            case UNISON -> add(FindingKind.PARALLEL_UNISONS, at, pair);
            case FIFTH -> add(FindingKind.PARALLEL_FIFTHS, at, pair);
            case OCTAVE -> add(FindingKind.PARALLEL_OCTAVES, at, pair);
            default -> {}
        }
        switch (pair.contrary()) {
            case FIFTH -> add(FindingKind.CONTRARY_FIFTHS, at, pair);
            case UNISON, OCTAVE -> add(FindingKind.CONTRARY_OCTAVES, at, pair);
            default -> {}
        }
    }

    private void unequalFifths(VoicePair pair, int at) {
        if (pair.lower().voice() == 0 && pair.opensDiminishedFifth()) {
            add(FindingKind.UNEQUAL_FIFTHS, at, pair);
        }
    }

    private void directs(VoicePair pair, int at) {
        if (pair.upper().isLeap() && pair.direct() != PerfectInterval.NONE) {
            add(
                    pair.direct() == PerfectInterval.FIFTH ? FindingKind.DIRECT_FIFTHS : FindingKind.DIRECT_OCTAVES,
                    at,
                    pair);
        }
    }

    /** Neighbours are enough: whoever passes a voice further off passes a neighbour too. Voices that cross are told as such. */
    private void overlaps(MotionStep step, int at) {
        List<VoiceMove> moves = step.moves();
        for (int i = 1; i < moves.size(); i++) {
            VoiceMove lower = moves.get(i - 1);
            VoiceMove upper = moves.get(i);
            boolean crossed = isAbove(lower.from(), upper.from()) || isAbove(lower.to(), upper.to());
            if (!crossed && (isAbove(lower.to(), upper.from()) || isAbove(lower.from(), upper.to()))) {
                add(FindingKind.OVERLAP, at, List.of(lower.voice(), upper.voice()));
            }
        }
    }

    private void augmentedSteps(VoiceMove move, int at) {
        int letters = Math.abs(move.staffSteps());
        int halfSteps = Math.abs(move.semitones());
        boolean second = letters == 1 && halfSteps == AUGMENTED_SECOND;
        if (second || letters == FOURTH && halfSteps == AUGMENTED_FOURTH) {
            add(FindingKind.AUGMENTED_STEP, at, List.of(move.voice()));
        }
    }

    private void add(FindingKind kind, int at, VoicePair pair) {
        add(kind, at, List.of(pair.lower().voice(), pair.upper().voice()));
    }

    private void add(FindingKind kind, int at, List<Integer> voices) {
        add(kind, Weight.FAULT, at, voices);
    }
}
