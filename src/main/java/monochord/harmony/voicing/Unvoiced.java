package monochord.harmony.voicing;

import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.note.Signs;

/** A chord has no voicing that keeps the rules of a style within a reach. */
public final class Unvoiced extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient VoicingTask task;
    private final int index;

    Unvoiced(VoicingTask task, int index) {
        this.task = task;
        this.index = index;
    }

    /** What cannot be played: a clause. */
    public Phrase said() {
        Phrase within = Phrase.of(
                "{0} has no {1} within {2}",
                task.chords().get(index), task.style().voicing(), task.reach().inWords());
        return task.tops()
                .get(index)
                .map(top -> Phrase.of("{0} with {1} on top", within, top))
                .orElse(within);
    }

    /** {@link #said} in English and ASCII; put into words when it is asked for. */
    @Override
    public String getMessage() {
        return said().in(Reader.of(Signs.ASCII)).plain();
    }

    public VoicingTask task() {
        return task;
    }

    /** Which chord, from 0. */
    public int index() {
        return index;
    }
}
