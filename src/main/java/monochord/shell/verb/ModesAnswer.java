package monochord.shell.verb;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.shell.line.LineMode;
import monochord.text.Columns;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * The table of what Enter and the words beside it do, mode by mode.
 *
 * @param here the mode of the line, which is marked
 */
record ModesAnswer(LineMode here) implements Answer {
    /** Columns from the beginning of one column of the table to that of the next, unless its words need more. */
    private static final int[] WIDTHS = {19, 16, 16, 14, 15};

    @Override
    public StyledText text(Look look) {
        Reader reader = look.reader();
        StyledText table = table(reader);
        boolean isNarrow = look.plain() || look.width() < columns(table);
        return (isNarrow ? sentences(reader) : table).plus(end(reader)).wrapped(look.width());
    }

    /** No fewer than its columns have in English, so that it is a table in the same windows whatever the mode. */
    private static int columns(StyledText table) {
        return Math.max(table.columns(), IntStream.of(WIDTHS).sum());
    }

    private StyledText table(Reader reader) {
        List<List<String>> rows = new ArrayList<>(List.of(List.of("", "Enter", "skip", "back", "hint")));
        for (LineMode mode : LineMode.values()) {
            rows.add(Stream.of(mode.where(), mode.enter(), mode.skip(), mode.back(), mode.hint())
                    .map(cell -> cell.in(reader).plain())
                    .toList());
        }
        int[] widths = widths(rows);
        StyledText.Builder text = StyledText.builder(reader).line(row(rows.get(0), widths), Style.TYPED);
        for (LineMode mode : LineMode.values()) {
            text.line(row(rows.get(mode.ordinal() + 1), widths), mode == here ? Style.STRONG : Style.PLAIN);
        }
        return text.build();
    }

    private static int[] widths(List<List<String>> rows) {
        int[] widths = WIDTHS.clone();
        rows.forEach(row -> Arrays.setAll(widths, i -> Math.max(widths[i], Columns.of(row.get(i)) + 1)));
        return widths;
    }

    private StyledText end(Reader reader) {
        Phrase end = Phrase.sentence("You are here: {0}. quit, or ctrl-D, {1}.", here.where(), LineMode.QUIT);
        return StyledText.of(end.styled(Style.QUIET), reader);
    }

    private static String row(List<String> cells, int[] widths) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            row.append(cell).append(" ".repeat(widths[i] - Columns.of(cell)));
        }
        return row.toString().stripTrailing();
    }

    /** For narrow windows, and for whoever has it read aloud. */
    private StyledText sentences(Reader reader) {
        StyledText.Builder text = StyledText.builder(reader);
        for (LineMode mode : LineMode.values()) {
            List<Phrase> said = new ArrayList<>(List.of(does("Enter", mode.enter())));
            add("skip", mode.skip(), said);
            add("back", mode.back(), said);
            add("hint", mode.hint(), said);
            Phrase line = Phrase.of("{0}: {1}.", mode.where(), Phrase.joined("; ", said));
            text.line(mode == here ? line.styled(Style.STRONG) : line);
        }
        return text.build();
    }

    private static void add(String word, Phrase cell, List<Phrase> said) {
        if (LineMode.isSomething(cell)) {
            said.add(does(word, cell));
        }
    }

    private static Phrase does(String word, Phrase cell) {
        return Phrase.of("{0} {1}", Phrase.verb(word), cell);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "modes").put("mode", here.where().toString());
        json.objects(
                "modes",
                List.of(LineMode.values()),
                (object, mode) -> object.put("where", mode.where().toString())
                        .put("enter", mode.enter().toString())
                        .put("skip", mode.skip().toString())
                        .put("back", mode.back().toString())
                        .put("hint", mode.hint().toString())
                        .put("quit", LineMode.QUIT.toString()));
    }
}
