package monochord.shell.replay;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import monochord.notebook.Exchange;
import monochord.notebook.Notebook;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.ProseAnswer;

/**
 * A notebook that was opened: what stands at its end, as much as the screen holds.
 *
 * @param lines how many lines the screen shows at once
 * @param foreign what of somebody else's Java was not run, perhaps nothing
 * @param howToTrust what to type to have it run
 * @param called what is to be said of the names of notes, perhaps nothing
 */
public record OpenAnswer(
        String path, Replayed replayed, int lines, List<String> foreign, Phrase howToTrust, Phrase called)
        implements Answer {
    private static final int AROUND = 8;
    private static final int MOST_FOREIGN = 16;
    private static final int LONGEST_FOREIGN = 200;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        StyledText end = end(look);
        Notebook notebook = replayed.written();
        text.line(title(notebook), Style.STRONG).gap();
        if (!end.isEmpty()) {
            text.lines(end).gap();
        }
        trust(text);
        if (!replayed.differences().isEmpty()) {
            text.line(Phrase.of(
                    "{0} of them are answered otherwise now; replay tells which.",
                    replayed.differences().size()));
        }
        text.line(Phrase.of("What you type goes on from here.").then(called), Style.QUIET);
        return text.build().wrapped(look.width());
    }

    private Phrase title(Notebook notebook) {
        int lines = replayed.turns().size();
        Phrase file = Phrase.counted(lines, "{0}, {1} line.", "{0}, {1} lines.", Phrase.typed(path), lines);
        return notebook.title()
                .map(said -> Phrase.of("{0}, {1}", Phrase.typed(said), file))
                .orElse(file);
    }

    private void trust(StyledText.Builder text) {
        if (foreign.isEmpty()) {
            return;
        }
        text.line(Phrase.of("It is not ours, and holds Java that was not run:"));
        List<String> code = foreign.stream().flatMap(String::lines).toList();
        code.stream().limit(MOST_FOREIGN).forEach(line -> text.line("  " + cut(line), Style.JAVA));
        int more = code.size() - MOST_FOREIGN;
        if (more > 0) {
            text.line(Phrase.counted(
                    more,
                    "  … and {0} more line: look at the file before you say yes.",
                    "  … and {0} more lines: look at the file before you say yes.",
                    more));
        }
        text.line(howToTrust);
    }

    private static String cut(String line) {
        return line.length() > LONGEST_FOREIGN ? line.substring(0, LONGEST_FOREIGN) + "…" : line;
    }

    /** The last parts and exchanges that fit the screen together; one at least. */
    private StyledText end(Look look) {
        Deque<StyledText> shown = new ArrayDeque<>();
        int room = lines == Integer.MAX_VALUE ? lines : Math.max(1, lines - AROUND);
        List<StyledText> all = replayed.written().parts().stream()
                .flatMap(part -> shown(part, look).stream())
                .toList();
        for (int i = all.size() - 1; i >= 0; i--) {
            int needed = all.get(i).lines().size() + 1;
            if (needed > room && !shown.isEmpty()) {
                break;
            }
            room -= needed;
            shown.addFirst(all.get(i));
        }
        return together(shown, look);
    }

    private static StyledText together(Deque<StyledText> shown, Look look) {
        StyledText.Builder text = StyledText.builder();
        boolean first = true;
        for (StyledText one : shown) {
            if (!first) {
                text.gap();
            }
            text.lines(one);
            first = false;
        }
        return text.build().wrapped(look.width());
    }

    private static List<StyledText> shown(Notebook.NotebookPart part, Look look) {
        if (part instanceof Notebook.NotebookProse prose) {
            return Optional.of(new ProseAnswer(prose.blocks(), Phrase::typed).text(look))
                    .filter(words -> !words.isEmpty())
                    .map(List::of)
                    .orElse(List.of());
        }
        return ((Notebook.Console) part)
                .exchanges().stream().map(OpenAnswer::shown).toList();
    }

    private static StyledText shown(Exchange exchange) {
        StyledText.Builder text = StyledText.builder();
        String mark = exchange.isOpening() ? "$ " : "▸ ";
        for (String typed : exchange.typed()) {
            text.line(StyledLine.of(mark + typed, Style.TYPED));
            mark = "▹ ";
        }
        if (!exchange.answer().isEmpty()) {
            text.lines(StyledText.of(exchange.answer()));
        }
        return text.build();
    }

    @Override
    public void json(Json json) {
        json.put("kind", "open")
                .put("file", path)
                .put("title", replayed.written().title().orElse(null))
                .put("lines", replayed.turns().size())
                .put("differences", replayed.differences().size())
                .put("skipped", replayed.skipped().size());
    }
}
