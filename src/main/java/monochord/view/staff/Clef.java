package monochord.view.staff;

import java.util.List;
import monochord.text.Phrase;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.MusicSign;

/** A clef: which height each line of a staff has, see {@link monochord.theory.note.Pitch#staffPosition()}. */
public enum Clef {
    /** The top line is F5. */
    TREBLE("gClef", Phrase.of("treble clef"), 38, 3),
    /** The top line is A3. */
    BASS("fClef", Phrase.of("bass clef"), 26, 1);

    /** Lines of a staff. */
    static final int LINES = 5;

    private static final int OCTAVE = 7;
    private static final List<Integer> TREBLE_SHARPS = List.of(38, 35, 39, 36, 33, 37, 34);
    private static final List<Integer> TREBLE_FLATS = List.of(34, 37, 33, 36, 32, 35, 31);

    private final String sign;
    private final Phrase words;
    private final int top;
    private final int line;

    Clef(String sign, Phrase words, int top, int line) {
        this.sign = sign;
        this.words = words;
        this.top = top;
        this.line = line;
    }

    /** How far below the top line a height is. */
    double y(int staffPosition) {
        return (top - staffPosition) / 2.0;
    }

    int top() {
        return top;
    }

    int bottom() {
        return top - 2 * (LINES - 1);
    }

    /** How many ledger lines a note at a height needs. */
    public int ledgerLines(int staffPosition) {
        int above = (staffPosition - top) / 2;
        int below = (bottom() - staffPosition) / 2;
        return Math.max(0, Math.max(above, below));
    }

    int middle() {
        return top - (LINES - 1);
    }

    Drawn.Sign drawn() {
        return new Drawn.Sign("clef", words, MusicSign.named(sign), 0, line);
    }

    /** Smaller, as it is written within a line. */
    Drawn.Sign drawnWithin() {
        return new Drawn.Sign("clef", words, MusicSign.named(sign + "Change"), 0, line);
    }

    /**
     * Where the signs of a key stand, in the order in which they are written; in the bass clef the same picture two octaves
     * down. Common practice, no source.
     */
    List<Integer> signature(int count) {
        int down = this == BASS ? 2 * OCTAVE : 0;
        return (count > 0 ? TREBLE_SHARPS : TREBLE_FLATS)
                .stream().limit(Math.abs(count)).map(height -> height - down).toList();
    }
}
