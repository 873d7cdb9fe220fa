package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.Finding.FindingKind;
import monochord.harmony.motion.Finding.Weight;

/** The easier rules of {@link Strictness#BAND}. */
final class BandRules extends MotionRules {
    private static final int BLOCK_VOICES = 3;

    BandRules() {
        super(Weight.REMARK);
    }

    @Override
    void change(MotionStep step, int at) {
        List<List<Integer>> blocks = blocks(step);
        blocks.forEach(block -> add(FindingKind.BLOCK, Weight.REMARK, at, block));
        step.outer().ifPresent(pair -> outer(pair, at, blocks));
    }

    /** Bare fifths inside a block have been spoken of with the block. */
    private void outer(VoicePair pair, int at, List<List<Integer>> blocks) {
        List<Integer> voices = List.of(pair.lower().voice(), pair.upper().voice());
        switch (pair.parallel()) {
            case UNISON -> add(FindingKind.PARALLEL_UNISONS, Weight.FAULT, at, voices);
            case OCTAVE -> add(FindingKind.PARALLEL_OCTAVES, Weight.FAULT, at, voices);
            case FIFTH -> {
                if (blocks.stream().noneMatch(block -> block.containsAll(voices))) {
                    add(FindingKind.PARALLEL_FIFTHS, Weight.REMARK, at, voices);
                }
            }
            default -> {}
        }
    }

    /** Each set of three voices or more that go the same way by as many letters, from the bottom. */
    static List<List<Integer>> blocks(MotionStep step) {
        List<List<Integer>> blocks = new ArrayList<>();
        List<VoiceMove> moves = step.moves();
        boolean[] known = new boolean[moves.size()];
        for (int i = 0; i + BLOCK_VOICES <= moves.size(); i++) {
            List<Integer> block = known[i] ? List.of() : together(i, moves, known);
            if (block.size() >= BLOCK_VOICES) {
                blocks.add(block);
            }
        }
        return blocks;
    }

    private static List<Integer> together(int first, List<VoiceMove> moves, boolean[] known) {
        List<Integer> block = new ArrayList<>();
        for (int i = first; i < moves.size(); i++) {
            if (isTogether(moves.get(first), moves.get(i))) {
                block.add(moves.get(i).voice());
                known[i] = true;
            }
        }
        return block;
    }

    private static boolean isTogether(VoiceMove one, VoiceMove other) {
        return one.direction() * other.direction() > 0 && one.staffSteps() == other.staffSteps();
    }
}
