package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import monochord.lesson.Fault;
import monochord.lesson.Trouble;
import monochord.text.Phrase;

/** Gathers the faults of one file. */
public final class Faults {
    /** Past this many nobody reads on, and a file of rubbish would give as many faults as it has lines. */
    private static final int MOST = 100;

    private final String path;
    private final List<Fault> faults = new ArrayList<>();

    public Faults(String path) {
        this.path = path;
    }

    /**
     * @param line from 1
     * @param column from 1
     */
    public void at(int line, int column, Phrase what, Phrase instead) {
        if (faults.size() > MOST) {
            return;
        }
        Fault fault = new Fault(path, line, column, what, instead);
        if (!faults.contains(fault)) {
            faults.add(fault);
        }
    }

    /**
     * A trouble in a piece of a line.
     *
     * @param from index in the line where the piece begins
     */
    public void in(SourceLine line, int from, Trouble trouble) {
        at(line.number(), line.column(from + trouble.place()), trouble.what(), trouble.instead());
    }

    public List<Fault> inOrder() {
        List<Fault> all = new ArrayList<>(faults.subList(0, Math.min(MOST, faults.size())));
        all.sort(Fault.IN_ORDER);
        if (faults.size() > MOST) {
            Fault last = all.get(MOST - 1);
            all.add(new Fault(
                    path,
                    last.line(),
                    last.column(),
                    Phrase.of("there are more faults"),
                    Phrase.of("put these right and check again")));
        }
        return List.copyOf(all);
    }
}
