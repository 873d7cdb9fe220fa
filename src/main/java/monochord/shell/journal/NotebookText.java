package monochord.shell.journal;

import java.util.ArrayList;
import java.util.List;
import monochord.notebook.Exchange;
import monochord.notebook.Notebook;
import monochord.notebook.Start;

/** Puts a notebook together: exchanges that follow each other share a block, an empty line parts what does not. */
final class NotebookText {
    private final Start start;
    private final List<Notebook.NotebookPart> parts = new ArrayList<>();
    private final List<Exchange> exchanges = new ArrayList<>();
    private final StringBuilder prose = new StringBuilder();

    /** Behind what is written already, which stays as it is; a block at its end is gone on with. */
    NotebookText(Notebook before) {
        start = before.start();
        for (Notebook.NotebookPart part : before.parts()) {
            closeExchanges();
            if (part instanceof Notebook.NotebookProse words) {
                prose.append(words.text());
            } else {
                closeProse();
                exchanges.addAll(((Notebook.Console) part).exchanges());
            }
        }
    }

    private NotebookText(Start start) {
        this.start = start;
    }

    /** The same notebook, blocks with nothing but empty lines between them made one, for a draft has a block an exchange. */
    static Notebook merged(Notebook draft) {
        NotebookText pages = new NotebookText(draft.start());
        for (Notebook.NotebookPart part : draft.parts()) {
            if (part instanceof Notebook.Console console) {
                console.exchanges().forEach(pages::add);
            } else if (!((Notebook.NotebookProse) part).text().isBlank()) {
                pages.add(((Notebook.NotebookProse) part).text().strip());
            }
        }
        return pages.notebook();
    }

    void add(Exchange exchange) {
        if (exchanges.isEmpty()) {
            gap();
            closeProse();
        }
        exchanges.add(exchange);
    }

    void add(String words) {
        closeExchanges();
        gap();
        prose.append(words).append('\n');
    }

    /** Leaves an empty line above what comes, unless it comes first. */
    private void gap() {
        boolean first = prose.isEmpty() && parts.isEmpty() && start.written().isEmpty();
        boolean apart = prose.toString().endsWith("\n\n");
        if (!first && !apart) {
            prose.append(prose.isEmpty() || prose.charAt(prose.length() - 1) == '\n' ? "\n" : "\n\n");
        }
    }

    private void closeProse() {
        if (!prose.isEmpty()) {
            parts.add(new Notebook.NotebookProse(0, prose.toString()));
            prose.setLength(0);
        }
    }

    private void closeExchanges() {
        if (!exchanges.isEmpty()) {
            parts.add(new Notebook.Console(0, exchanges));
            exchanges.clear();
        }
    }

    Notebook notebook() {
        closeExchanges();
        closeProse();
        return new Notebook(start, parts);
    }
}
