package monochord.harmony.voicing;

/** A chord has no voicing that keeps the rules of a style within a reach. */
public final class Unvoiced extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient VoicingTask task;
    private final int index;

    Unvoiced(VoicingTask task, int index) {
        super(task.chords().get(index) + " has no " + task.style() + " voicing within "
                + task.reach().inWords()
                + task.tops().get(index).map(top -> " with " + top + " on top").orElse(""));
        this.task = task;
        this.index = index;
    }

    public VoicingTask task() {
        return task;
    }

    /** Which chord, from 0. */
    public int index() {
        return index;
    }
}
