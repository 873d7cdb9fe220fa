package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import monochord.text.Columns;
import monochord.text.Reader;
import monochord.text.Span;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * A progression as a grid: one row a chord, each tone in the column of its key, a keyboard above as the ruler. A tone
 * that two chords share stands in one column.
 */
public final class ProgressionPicture {
    private static final int WIDEST = 80;

    private ProgressionPicture() {}

    /**
     * Where the width does not do, the numerals go first, then the keys grow narrow, at last the same is said in words;
     * so it is where one chord has two names on one key.
     *
     * @param width columns; more than 80 are not used
     */
    public static StyledText of(List<ChordOnKeys> rows, Reader reader, int width) {
        List<MarkedKey> marks =
                rows.stream().flatMap(row -> row.marked().stream()).toList();
        boolean shared = rows.stream().anyMatch(row -> KeyboardPicture.sharesKey(row.marked()));
        if (width < KeyboardPicture.NARROWEST || marks.isEmpty() || shared) {
            return KeyboardWords.progression(rows, reader, width);
        }
        return grids(rows, marks, reader.signs()).stream()
                .map(ProgressionGrid::draw)
                .flatMap(Optional::stream)
                .filter(drawn -> drawn.columns() <= Math.min(width, WIDEST))
                .findFirst()
                .orElseGet(() -> KeyboardWords.progression(rows, reader, width));
    }

    private static List<ProgressionGrid> grids(List<ChordOnKeys> rows, List<MarkedKey> marks, Signs signs) {
        List<ProgressionGrid> grids = new ArrayList<>();
        for (KeyboardRange keys : KeyboardPicture.stretches(marks, signs)) {
            grids.add(new ProgressionGrid(rows, signs, keys, true));
            grids.add(new ProgressionGrid(rows, signs, keys, false));
        }
        return grids;
    }

    /** One try at a grid on one stretch of keyboard. */
    private record ProgressionGrid(List<ChordOnKeys> rows, Signs signs, KeyboardRange keys, boolean numerals) {
        Optional<StyledText> draw() {
            int symbols =
                    widest(rows.stream().map(row -> row.chord().write(signs)).toList());
            int label = symbols
                    + (numerals
                            ? 2
                                    + widest(rows.stream()
                                            .map(row -> row.numeral().write(signs))
                                            .toList())
                            : 0);
            KeyboardRange placed = keys.withMargin(label + 2 + keys.pitch() / 2);
            List<StyledLine> lines = new ArrayList<>(ruler(placed));
            if (lines.isEmpty()) {
                return Optional.empty();
            }
            for (ChordOnKeys row : rows) {
                Optional<StyledLine> line = line(row, placed, label - symbols);
                if (line.isEmpty()) {
                    return Optional.empty();
                }
                lines.add(line.get());
            }
            return Optional.of(new StyledText(lines));
        }

        private static int widest(List<String> texts) {
            return texts.stream().mapToInt(Columns::of).max().orElse(0);
        }

        /** Two lines, or none where the names of the white keys do not fit. */
        private List<StyledLine> ruler(KeyboardRange placed) {
            PictureRow black = new PictureRow();
            PictureRow white = new PictureRow(true);
            placed.all()
                    .forEach(key ->
                            (KeyboardRange.isBlack(key) ? black : white).put(placed.column(key), rulerSign(key)));
            int start = placed.margin() - placed.pitch() / 2;
            char string = signs.isAscii() ? '-' : '─';
            Optional<TreeMap<Integer, Span>> names = white.placed();
            if (names.isEmpty()) {
                return List.of();
            }
            StyledLine letters = PictureRow.draw(names.get(), start, placed.columns(), string);
            return List.of(
                    PictureRow.draw(black.placed().orElseThrow(), 0, 0, ' '),
                    StyledLine.of(" ".repeat(start)).plus(letters));
        }

        private Span rulerSign(int key) {
            String sign = KeyboardRange.isBlack(key)
                    ? KeyboardDrawing.unmarked(signs, true)
                    : NoteName.of("C D EF G A B".charAt(Math.floorMod(key, 12)), 0)
                            .write(signs);
            return new Span(sign, Style.QUIET);
        }

        private Optional<StyledLine> line(ChordOnKeys row, KeyboardRange placed, int numeralColumns) {
            PictureRow tones = new PictureRow(true);
            row.marked()
                    .forEach(mark -> tones.put(
                            placed.column(mark.key()),
                            new Span(
                                    mark.pitch().name().write(signs),
                                    mark.role().style())));
            return tones.placed().map(at -> label(row, at, numeralColumns));
        }

        private StyledLine label(ChordOnKeys row, TreeMap<Integer, Span> tones, int numeralColumns) {
            if (numerals) {
                tones.put(0, new Span(row.numeral().write(signs), Style.QUIET));
            }
            tones.put(numeralColumns, new Span(row.chord().write(signs), Style.STRONG));
            return PictureRow.draw(tones, 0, 0, ' ');
        }
    }
}
