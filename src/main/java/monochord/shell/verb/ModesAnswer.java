package monochord.shell.verb;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.shell.sitting.LineMode;
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
    private static final int[] WIDTHS = {19, 16, 16, 14, 15};
    private static final int WIDTH = 80;

    @Override
    public StyledText text(Look look) {
        Reader reader = look.reader();
        boolean isNarrow = look.width() < WIDTH || look.plain();
        return (isNarrow ? sentences(reader) : table(reader)).wrapped(look.width());
    }

    private StyledText table(Reader reader) {
        StyledText.Builder text = StyledText.builder(reader);
        text.line(row(List.of("", "Enter", "skip", "back", "hint")), Style.TYPED);
        for (LineMode mode : LineMode.values()) {
            List<String> cells = Stream.of(mode.where(), mode.enter(), mode.skip(), mode.back(), mode.hint())
                    .map(cell -> cell.in(reader).plain())
                    .toList();
            text.line(row(cells), mode == here ? Style.STRONG : Style.PLAIN);
        }
        return text.line(end()).build();
    }

    private Phrase end() {
        return Phrase.sentence("You are here: {0}. quit, or ctrl-D, {1}.", here.where(), LineMode.QUIT)
                .styled(Style.QUIET);
    }

    private static String row(List<String> cells) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            row.append(String.format("%-" + WIDTHS[i] + "s", cells.get(i)));
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
        return text.line(end()).build();
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
        json.put("mode", here.where().toString());
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
