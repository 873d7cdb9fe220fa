package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import monochord.text.Reader;
import monochord.text.Span;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * Draws marked keys on one stretch of keyboard.
 *
 * <p>The white keys are notches on a string, the black keys blocks above it. A marked key shows its name in place of the
 * notch or block, its role beside it on the free side: over a black key, under a white one.
 */
final class KeyboardDrawing {
    private final KeyboardRange keys;
    private final Reader reader;
    private final Signs signs;
    private final Map<Integer, MarkedKey> marked = new HashMap<>();

    KeyboardDrawing(KeyboardRange keys, Reader reader, List<MarkedKey> marks) {
        this.keys = keys;
        this.reader = reader;
        this.signs = reader.signs();
        marks.forEach(mark -> marked.put(mark.key(), mark));
    }

    /** @param octaves whether the octaves are numbered in a last line */
    Optional<StyledText> draw(boolean octaves) {
        List<Optional<TreeMap<Integer, Span>>> rows = new ArrayList<>();
        rows.add(roles(true).placed());
        rows.add(names(true).placed());
        rows.add(names(false).placed());
        rows.add(roles(false).placed());
        rows.add(octaves ? octaves().placed() : Optional.of(new TreeMap<>()));
        return text(rows)
                .map(drawn -> new StyledText(
                        drawn.lines().stream().filter(line -> !line.isBlank()).toList()));
    }

    /** Always four lines, however little is marked, so that a picture that changes stays in its place. */
    Optional<StyledText> drawStill() {
        return text(List.of(
                roles(true).placed(),
                names(true).placed(),
                names(false).placed(),
                roles(false).placed()));
    }

    private Optional<StyledText> text(List<Optional<TreeMap<Integer, Span>>> rows) {
        return rows.stream().allMatch(Optional::isPresent)
                ? Optional.of(lines(rows.stream().map(Optional::get).toList()))
                : Optional.empty();
    }

    private StyledText lines(List<TreeMap<Integer, Span>> rows) {
        int from = Math.min(
                0,
                rows.stream()
                        .filter(row -> !row.isEmpty())
                        .mapToInt(TreeMap::firstKey)
                        .min()
                        .orElse(0));
        List<StyledLine> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            lines.add(i == 2 ? string(rows.get(i), from) : PictureRow.draw(rows.get(i), from, 0, ' '));
        }
        return new StyledText(lines);
    }

    private StyledLine string(TreeMap<Integer, Span> row, int from) {
        char string = signs.isAscii() ? '-' : '─';
        StyledLine before = StyledLine.of(" ".repeat(keys.column(keys.low()) - keys.pitch() / 2 - from));
        return before.plus(PictureRow.draw(row, keys.column(keys.low()) - keys.pitch() / 2, keys.columns(), string));
    }

    private PictureRow names(boolean black) {
        PictureRow row = new PictureRow(true);
        keys.all()
                .filter(key -> KeyboardRange.isBlack(key) == black)
                .forEach(key -> row.put(keys.column(key), sign(key)));
        return row;
    }

    private Span sign(int key) {
        MarkedKey mark = marked.get(key);
        return mark == null
                ? new Span(unmarked(signs, KeyboardRange.isBlack(key)), Style.QUIET)
                : new Span(mark.pitch().name().write(signs), mark.role().style());
    }

    /** A key that is not marked. */
    static String unmarked(Signs signs, boolean black) {
        return black ? (signs.isAscii() ? "[]" : "██") : (signs.isAscii() ? "+" : "┴");
    }

    private PictureRow roles(boolean black) {
        PictureRow row = new PictureRow();
        marked.values().stream()
                .filter(mark -> KeyboardRange.isBlack(mark.key()) == black)
                .forEach(mark -> row.put(
                        keys.column(mark.key()),
                        new Span(mark.role().label(reader), mark.role().style())));
        return row;
    }

    private PictureRow octaves() {
        PictureRow row = new PictureRow();
        keys.all().filter(key -> Math.floorMod(key, 12) == 0).forEach(key -> row.put(keys.column(key), octave(key)));
        return row;
    }

    private Span octave(int key) {
        return new Span(NoteName.C.write(signs) + (Math.floorDiv(key, 12) - 1), Style.QUIET);
    }
}
