package monochord.harmony.motion;

import java.util.List;
import java.util.Locale;
import monochord.text.Phrase;

/** How strictly moving voices are judged. */
public enum Strictness {
    /**
     * The textbook rules for four singing parts, between all voices: no parallel unisons, fifths or octaves, none by
     * contrary motion, no direct fifth or octave of the outer voices under a leaping top, no diminished fifth with the
     * bass that opens into a perfect one, no crossing, no overlap, no melodic augmented second or fourth.
     *
     * <p>Source: Integrated Music Theory (open university course text), lessons 10a and 10b; Open Music Theory, 1st
     * edition (2014), on figured bass, first species and intervals.
     */
    CHORALE(Phrase.of("chorale rules")) {
        @Override
        List<Finding> judge(Passage passage, List<MotionStep> steps) {
            return new ChoraleRules().judge(passage, steps);
        }
    },
    /**
     * Keyboard and pop playing, where doublings and blocks are a colour: bass and top in parallel octaves or unisons are
     * a fault; three voices or more that slide as one block, bare fifths between bass and top, and a crossing get a
     * remark. Common practice, no source.
     */
    BAND(Phrase.of("band practice")) {
        @Override
        List<Finding> judge(Passage passage, List<MotionStep> steps) {
            return new BandRules().judge(passage, steps);
        }
    };

    private final Phrase title;

    Strictness(Phrase title) {
        this.title = title;
    }

    abstract List<Finding> judge(Passage passage, List<MotionStep> steps);

    /** All that is found in the passage, in the order in which it is heard. */
    public List<Finding> judge(Passage passage) {
        return judge(passage, passage.steps());
    }

    /** What it goes by: {@code chorale rules}, {@code band practice}. */
    public Phrase title() {
        return title;
    }

    /** In small letters: {@code chorale}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
