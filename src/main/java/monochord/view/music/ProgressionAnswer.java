package monochord.view.music;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.keyboard.Drawing;

/** A progression as symbols and numerals, with a word on each chord that is not the key's own, and drawn. */
public record ProgressionAnswer(Progression progression) implements Answer {
    private static final int GAP = 2;

    static List<ChordRow> rows(Progression progression) {
        List<ChordRow> rows = new ArrayList<>();
        for (ChordEvent slot : progression.slots()) {
            if (!slot.held()) {
                rows.add(new ChordRow(slot.chord(), slot.numeral(), progression.key()));
            }
        }
        return rows;
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        text.line("In " + progression.key().write(look.signs()), Style.HEADING);
        text.lines(look.plain() ? words(look) : columns(look));
        origins(look).forEach(text::line);
        StyledText said = text.build().wrapped(look.width());
        return said.plus(Pictures.progression(progression, look));
    }

    private StyledText words(Look look) {
        return StyledText.of(
                StyledLine.of("Chords: " + progression.symbols(look.signs())),
                StyledLine.of("Numerals: " + progression.numerals(look.signs())));
    }

    /** Symbols over numerals, each pair in a column, as many as the width allows on a line. */
    private StyledText columns(Look look) {
        String[] symbols = progression.symbols(look.signs()).split(" ");
        String[] numerals = progression.numerals(look.signs()).split(" ");
        StyledText.Builder text = StyledText.builder();
        StringBuilder upper = new StringBuilder();
        StringBuilder lower = new StringBuilder();
        for (int i = 0; i < symbols.length; i++) {
            int width = Math.max(columnsOf(symbols[i]), columnsOf(numerals[i])) + GAP;
            if (columnsOf(upper) + width > look.width() && upper.length() > 0) {
                flush(text, upper, lower);
            }
            upper.append(symbols[i]).append(" ".repeat(width - columnsOf(symbols[i])));
            lower.append(numerals[i]).append(" ".repeat(width - columnsOf(numerals[i])));
        }
        flush(text, upper, lower);
        return text.build();
    }

    private static void flush(StyledText.Builder text, StringBuilder upper, StringBuilder lower) {
        text.line(upper.toString().stripTrailing(), Style.STRONG)
                .line(lower.toString().stripTrailing());
        upper.setLength(0);
        lower.setLength(0);
    }

    private static int columnsOf(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }

    private List<String> origins(Look look) {
        Set<String> said = new LinkedHashSet<>();
        for (ChordRow row : rows(progression)) {
            if (!row.key().isOwn(row.chord())) {
                said.add(row.chord().write(look.signs()) + ", " + row.numeral().write(look.signs()) + ": "
                        + row.origin(look) + ".");
            }
        }
        return new ArrayList<>(said);
    }

    @Override
    public List<Drawing> drawings() {
        return Pictures.drawings(progression);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "progression")
                .put("key", progression.key().toString())
                .objects("chords", rows(progression), (object, row) -> row.json(object));
    }
}
