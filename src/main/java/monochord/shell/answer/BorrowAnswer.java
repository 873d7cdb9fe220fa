package monochord.shell.answer;

import java.util.List;
import monochord.harmony.Borrowing.Borrowed;
import monochord.page.Style;
import monochord.page.StyledLine;
import monochord.page.StyledText;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;

/**
 * The chords a key can borrow.
 *
 * @param source the one parallel scale asked for, or null for all
 */
public record BorrowAnswer(Key key, ScaleKind source, List<Borrowed> chords) implements Answer {
    private static final int NUMERAL = 12;
    private static final int SYMBOL = 12;
    private static final int NOTES = 15;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        if (chords.isEmpty()) {
            text.line(key.write(look.signs()) + " has nothing to borrow there: all its chords are the key's own.");
            return text.build().wrapped(look.width());
        }
        String heading = "";
        for (Borrowed borrowed : chords) {
            String from = origin(borrowed, look);
            if (!from.equals(heading)) {
                text.line(from, Style.HEADING);
                heading = from;
            }
            text.line(row(borrowed, look));
        }
        text.line("A changed chord is agreed with the band before anyone plays it.", Style.QUIET);
        return text.build().wrapped(look.width());
    }

    private String origin(Borrowed borrowed, Look look) {
        Scale from = source != null
                ? new Scale(key.tonic(), source)
                : borrowed.sources().contains(key.parallel().scale())
                        ? key.parallel().scale()
                        : borrowed.sources().get(0);
        return "From " + from.write(look.signs());
    }

    private static StyledLine row(Borrowed borrowed, Look look) {
        String numeral = borrowed.numeral().write(look.signs());
        String symbol = borrowed.chord().write(look.signs());
        String notes = Words.notes(borrowed.chord().tones(), look);
        String changed = Words.joined(borrowed.changed(), " ", degree -> degree.write(look.signs()));
        return look.plain()
                ? StyledLine.of(numeral + " is " + symbol + ", " + notes + "; it changes " + changed + ".")
                : StyledLine.of("  " + pad(numeral, NUMERAL))
                        .plus(pad(symbol, SYMBOL), Style.STRONG)
                        .plus(pad(notes, NOTES))
                        .plus("  changes " + changed, Style.QUIET);
    }

    private static String pad(String text, int columns) {
        int width = text.codePointCount(0, text.length());
        return width < columns ? text + " ".repeat(columns - width) : text + " ";
    }

    @Override
    public void json(Json json) {
        json.put("key", key.toString()).objects("chords", chords, (object, borrowed) -> {
            new ChordRow(borrowed.chord(), borrowed.numeral(), key).json(object);
            object.put("changed", borrowed.changed());
        });
    }
}
