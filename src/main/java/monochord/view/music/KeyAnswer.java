package monochord.view.music;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.BandNumber;
import monochord.theory.Key;
import monochord.theory.note.Notated;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/** A key: its signature, its notes, its own triads, its neighbours. */
public record KeyAnswer(Key key) implements Answer {
    private static final int DEGREES = 7;
    private static final int COLUMN = 8;
    private static final int LABEL = 10;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.sentence("{0}: {1}.", Phrase.of("{0}", key).styled(Style.STRONG), MusicWords.signature(key)));
        boolean columns = look.width() > (DEGREES + 1) * COLUMN && !look.plain();
        return text.build().wrapped(look.width()).plus(columns ? inColumns(look) : inRows(look));
    }

    private StyledText inRows(Look look) {
        Progression triads = triads();
        Table table = scale().row(Phrase.of("Triads:"), Phrase.row(triads.symbols()))
                .row(Phrase.of("Numerals:"), Phrase.row(triads.numerals()));
        return neighbours(table).text(look);
    }

    /** Each triad over its numeral. */
    private StyledText inColumns(Look look) {
        Progression triads = triads();
        List<Column> columns =
                new ArrayList<>(Collections.nCopies(DEGREES, Column.left().atLeast(COLUMN)));
        columns.add(0, Column.left().atLeast(LABEL));
        Table chords = Table.of(columns.toArray(Column[]::new))
                .row(cells(Phrase.of("Triads:"), triads.symbols()))
                .row(cells(Phrase.of("Numerals:"), triads.numerals()));
        return scale().text(look)
                .plus(chords.text(look))
                .plus(neighbours(labelled()).text(look));
    }

    private Table scale() {
        return labelled().row(Phrase.of("Scale:"), Phrase.row(key.scale().tones()));
    }

    private Table neighbours(Table table) {
        return table.row(Phrase.of("Relative:"), Phrase.of("{0}, the same notes.", key.relative()))
                .row(
                        Phrase.of("Parallel:"),
                        Phrase.of("{0}, the same tonic; borrowed chords live there.", key.parallel()));
    }

    private static List<Phrase> cells(Phrase label, List<Notated> names) {
        List<Phrase> cells = new ArrayList<>(List.of(label));
        names.forEach(name -> cells.add(Phrase.of("{0}", name)));
        return cells;
    }

    private static Table labelled() {
        return Table.of(Column.left().atLeast(LABEL), Column.left());
    }

    private Progression triads() {
        String numbers = String.join(
                " ",
                IntStream.rangeClosed(1, DEGREES).mapToObj(Integer::toString).toList());
        return Progression.parse(numbers, key);
    }

    @Override
    public void json(Json json) {
        Progression triads = triads();
        json.put("kind", "key")
                .put("key", key.toString())
                .put("signature", key.signature())
                .put("tones", key.scale().tones())
                .put("triads", triads.chords())
                .put(
                        "numbers",
                        triads.chords().stream()
                                .map(chord -> BandNumber.write(chord, key, Signs.ASCII))
                                .toList())
                .put("relative", key.relative().toString())
                .put("parallel", key.parallel().toString());
    }
}
