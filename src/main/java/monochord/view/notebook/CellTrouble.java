package monochord.view.notebook;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.NoteNaming;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What went wrong in a cell, and where.
 *
 * @param message a line each
 * @param text the whole cell
 * @param place index of the character in it, or −1 where there is none
 * @param line the line of it, from 1, or 0 where it does not matter
 * @param status the exit status it is worth
 */
public record CellTrouble(List<Phrase> message, String text, int place, int line, int status) {
    private static final String INDENT = "  ";
    private static final String CARET = "^";
    private static final String CUT = "…";
    private static final Pattern UNREAD = Pattern.compile("^\".*\" is not an? ");

    StyledText text(Look look) {
        StyledText.Builder told = StyledText.builder(look.reader());
        Phrase where = line > 0 && place < 0 ? Phrase.sentence("In line {0} of the cell.", line) : Phrase.NOTHING;
        for (int i = 0; i < message.size(); i++) {
            told.line(i + 1 < message.size() ? message.get(i) : message.get(i).then(where));
        }
        if (look.signs().naming() != NoteNaming.ENGLISH
                && UNREAD.matcher(english()).find()) {
            told.line(Phrase.of("In Java notes go by their English names."));
        }
        StyledText.Builder shown = StyledText.builder().lines(told.build().wrapped(look.width()));
        if (place >= 0) {
            shown.lines(pointed(look));
        } else if (line > 0) {
            shown.lines(StyledText.of(window(lineText(line), 0, look)[0], Style.QUIET));
        }
        return shown.build();
    }

    private String lineText(int number) {
        return text.lines().skip(number - 1L).findFirst().orElse("");
    }

    /** The line with a caret under the place; in plain looks the place in words. */
    private StyledText pointed(Look look) {
        int start = text.lastIndexOf('\n', Math.max(0, place - 1)) + 1;
        start = place < start ? 0 : start;
        int end = text.indexOf('\n', place);
        String whole = text.substring(start, end < 0 ? text.length() : end).replace('\t', ' ');
        int column = Math.min(place - start, whole.length());
        if (look.plain()) {
            int number = (int) text.substring(0, start)
                            .chars()
                            .filter(c -> c == '\n')
                            .count()
                    + 1;
            return StyledText.of(Phrase.of("Place: line {0}, character {1}.", number, column + 1), look.reader())
                    .wrapped(look.width());
        }
        String[] shown = window(whole, column, look);
        return StyledText.builder()
                .line(shown[0], Style.QUIET)
                .line(shown[1], Style.STRONG)
                .build();
    }

    /** As much of a line as the width allows, around a column, and a caret under that column. */
    private static String[] window(String line, int column, Look look) {
        int room = look.width() - INDENT.length() - 2 * CUT.length() - 1;
        int from = line.length() <= room ? 0 : Math.max(0, Math.min(column - room / 2, line.length() - room));
        int to = Math.min(line.length(), from + room);
        String before = from > 0 ? CUT : "";
        String after = to < line.length() ? CUT : "";
        String caret = INDENT + " ".repeat(before.length() + column - from) + CARET;
        return new String[] {INDENT + before + line.substring(from, to) + after, caret};
    }

    private String english() {
        return message.stream().map(Phrase::toString).collect(Collectors.joining("\n"));
    }

    void json(Json json) {
        json.put("error", english()).put("at", place >= 0 ? place + 1 : 1);
    }
}
