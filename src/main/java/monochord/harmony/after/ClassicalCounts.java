package monochord.harmony.after;

import java.util.List;
import monochord.harmony.TableText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;

/**
 * Counts of what came after a chord in major keys of classical scores; in how many works is not known.
 *
 * <p>Text form: lines of four columns with tabs between them, {@code from to times of}; lines that begin with {@code #}
 * are remarks.
 */
public record ClassicalCounts(List<ScoreCount> rows) {
    private static final int COLUMNS = 4;

    /**
     * How often one chord came after another.
     *
     * @param of how often the first chord stood at all
     */
    public record ScoreCount(Numeral from, Numeral to, int times, int of) {}

    public ClassicalCounts {
        rows = List.copyOf(rows);
    }

    /**
     * @throws IllegalArgumentException if a line has other columns
     * @throws monochord.theory.note.Unreadable if a chord is no numeral
     */
    public static ClassicalCounts parse(String text) {
        return new ClassicalCounts(TableText.rows(text, COLUMNS, ClassicalCounts::row));
    }

    private static ScoreCount row(String[] cells) {
        return new ScoreCount(
                Numeral.parse(cells[0]),
                Numeral.parse(cells[1]),
                Integer.parseInt(cells[2]),
                Integer.parseInt(cells[3]));
    }

    /** What came after this very chord, else after its triad in root position; nothing in other than major keys. */
    public List<ScoreCount> after(Chord chord, Key key) {
        if (!key.equals(Key.major(key.tonic()))) {
            return List.of();
        }
        List<ScoreCount> same = from(chord, key);
        return same.isEmpty() ? from(new Chord(chord.root(), chord.kind().triad()), key) : same;
    }

    private List<ScoreCount> from(Chord chord, Key key) {
        return rows.stream().filter(row -> row.from.in(key).equals(chord)).toList();
    }
}
