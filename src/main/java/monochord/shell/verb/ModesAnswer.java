package monochord.shell.verb;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.sitting.LineMode;
import monochord.text.Style;
import monochord.text.StyledLine;
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
    private static final String QUIT = "quit, or ctrl-D: " + LineMode.QUIT + ".";

    @Override
    public StyledText text(Look look) {
        return (look.width() < WIDTH || look.plain() ? sentences() : table())
                .in(look.signs())
                .wrapped(look.width());
    }

    private StyledText table() {
        StyledText.Builder text =
                StyledText.builder().line(row(List.of("", "Enter", "skip", "back", "hint")), Style.TYPED);
        for (LineMode mode : LineMode.values()) {
            text.line(row(cells(mode)), mode == here ? Style.STRONG : Style.PLAIN);
        }
        return text.line("You are here: " + here.where() + ". " + QUIT, Style.QUIET)
                .build();
    }

    private static List<String> cells(LineMode mode) {
        return List.of(mode.where(), mode.enter(), mode.skip(), mode.back(), mode.hint());
    }

    private static String row(List<String> cells) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            row.append(String.format("%-" + WIDTHS[i] + "s", cells.get(i)));
        }
        return row.toString().stripTrailing();
    }

    /** For narrow windows, and for whoever has it read aloud. */
    private StyledText sentences() {
        StyledText.Builder text = StyledText.builder();
        for (LineMode mode : LineMode.values()) {
            List<String> said = new ArrayList<>();
            said.add("Enter " + mode.enter());
            said.addAll(word("skip", mode.skip()));
            said.addAll(word("back", mode.back()));
            said.addAll(word("hint", mode.hint()));
            text.line(StyledLine.of(mode.where() + ": ", mode == here ? Style.STRONG : Style.PLAIN)
                    .plus(String.join("; ", said) + "."));
        }
        return text.line("You are here: " + here.where() + ". " + QUIT, Style.QUIET)
                .build();
    }

    private static List<String> word(String word, String cell) {
        return LineMode.isSomething(cell) ? List.of(word + " " + cell) : List.of();
    }

    @Override
    public void json(Json json) {
        json.put("mode", here.where());
        json.objects(
                "modes",
                List.of(LineMode.values()),
                (object, mode) -> object.put("where", mode.where())
                        .put("enter", mode.enter())
                        .put("skip", mode.skip())
                        .put("back", mode.back())
                        .put("hint", mode.hint())
                        .put("quit", LineMode.QUIT));
    }
}
