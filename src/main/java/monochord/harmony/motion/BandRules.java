package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.Finding.FindingKind;
import monochord.harmony.motion.Finding.Weight;
import monochord.theory.note.Pitch;

/** The easier rules of {@link Strictness#BAND}. */
final class BandRules {
    private static final int BLOCK_VOICES = 3;

    private final List<Finding> found = new ArrayList<>();

    private BandRules() {}

    static List<Finding> judge(Passage passage, List<MotionStep> steps) {
        BandRules rules = new BandRules();
        rules.crossings(passage.chords().get(0), 0);
        for (int i = 0; i < steps.size(); i++) {
            rules.change(steps.get(i), i + 1);
            rules.crossings(passage.chords().get(i + 1), i + 1);
        }
        return rules.found;
    }

    private void change(MotionStep step, int at) {
        List<List<Integer>> blocks = blocks(step);
        blocks.forEach(block -> found.add(new Finding(FindingKind.BLOCK, Weight.REMARK, at, block)));
        step.outer().ifPresent(pair -> outer(pair, at, blocks));
    }

    /** Bare fifths inside a block have been spoken of with the block. */
    private void outer(VoicePair pair, int at, List<List<Integer>> blocks) {
        List<Integer> voices = List.of(pair.lower().voice(), pair.upper().voice());
        switch (pair.parallel()) {
            case UNISON -> found.add(new Finding(FindingKind.PARALLEL_UNISONS, Weight.FAULT, at, voices));
            case OCTAVE -> found.add(new Finding(FindingKind.PARALLEL_OCTAVES, Weight.FAULT, at, voices));
            case FIFTH -> {
                if (blocks.stream().noneMatch(block -> block.containsAll(voices))) {
                    found.add(new Finding(FindingKind.PARALLEL_FIFTHS, Weight.REMARK, at, voices));
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

    private void crossings(List<Pitch> chord, int at) {
        for (int voice : ChoraleRules.crossed(chord)) {
            found.add(new Finding(FindingKind.CROSSING, Weight.REMARK, at, List.of(voice, voice + 1)));
        }
    }
}
