package monochord.shell.replay;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import monochord.notebook.AttachedFile;
import monochord.notebook.Exchange;
import monochord.notebook.Notebook;
import monochord.shell.sitting.Progress;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.view.Answer;
import monochord.view.Look;

/** Types a notebook's lines again, in a {@link Rehearsal}. */
public final class Replay {
    private static final LongSupplier NO_TIME = () -> 0;

    private final Notebook notebook;
    private final Rehearsal rehearsal;
    private final Progress progress;

    private Replay(Notebook notebook, Rehearsal rehearsal, Progress progress) {
        this.notebook = notebook;
        this.rehearsal = rehearsal;
        this.progress = progress;
    }

    /**
     * @param outside whose lessons and whose understanding of lines these are; nothing of it changes
     * @param trusted whether Java in it runs
     * @throws IOException if no folder can be made to keep it apart, or if it is stopped
     */
    public static Replayed of(Notebook notebook, Sitting outside, boolean trusted) throws IOException {
        try (Rehearsal rehearsal = new Rehearsal(notebook.start(), outside, NO_TIME, trusted)) {
            return new Replay(notebook, rehearsal, outside.outside().progress()).replayed();
        }
    }

    /**
     * Brings a sitting to where a notebook ends, as though its lines had been typed there.
     *
     * @param trusted whether Java in it runs
     * @throws IOException if no folder can be made to keep it apart
     */
    public static Replayed into(Sitting sitting, Notebook notebook, boolean trusted) throws IOException {
        try (Rehearsal rehearsal = new Rehearsal(notebook.start(), sitting, sitting.study()::now, trusted)) {
            Replayed replayed =
                    new Replay(notebook, rehearsal, sitting.outside().progress()).replayed();
            rehearsal.handOver();
            return replayed;
        }
    }

    private Replayed replayed() throws IOException {
        List<ReplayTurn> turns = new ArrayList<>();
        int lines = notebook.exchanges().size();
        for (Notebook.NotebookPart part : notebook.parts()) {
            if (part instanceof Notebook.NotebookProse prose) {
                for (AttachedFile file : prose.files()) {
                    rehearsal.put(file);
                }
            } else if (part instanceof Notebook.Console console) {
                for (Exchange exchange : console.exchanges()) {
                    turns.add(turn(exchange));
                    progress.step(() -> Phrase.sentence("Line {0} of {1}.", turns.size(), lines));
                }
            }
        }
        return new Replayed(notebook, turns);
    }

    private ReplayTurn turn(Exchange exchange) throws IOException {
        int before = rehearsal.withheld();
        Answer answer = exchange.isOpening() ? rehearsal.greeting() : rehearsal.type(exchange.text());
        Look look = Look.ofPipe().naming(rehearsal.naming());
        String text = answer.noted().orElse(answer).text(look).plain();
        boolean skipped =
                rehearsal.withheld() > before || before > 0 && exchange.text().indexOf('$') >= 0;
        return new ReplayTurn(
                exchange,
                answer,
                Exchange.settled(SafeText.clean(text)),
                rehearsal.naming(),
                rehearsal.heard(),
                skipped);
    }
}
