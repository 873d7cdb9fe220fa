package monochord.view.staff;

import java.util.List;
import monochord.text.Phrase;

/** A clef: which height each line of a staff has, see {@link monochord.theory.note.Pitch#staffPosition()}. */
public enum Clef {
    /** The top line is F5. */
    TREBLE(
            "gClef",
            Phrase.of("treble clef"),
            38,
            3,
            List.of(38, 35, 39, 36, 33, 37, 34),
            List.of(34, 37, 33, 36, 32, 35, 31)),
    /** The top line is A3. */
    BASS(
            "fClef",
            Phrase.of("bass clef"),
            26,
            1,
            List.of(24, 21, 25, 22, 19, 23, 20),
            List.of(20, 23, 19, 22, 18, 21, 17));

    /** Lines of a staff. */
    static final int LINES = 5;

    private final String sign;
    private final Phrase words;
    private final int top;
    private final int line;
    private final List<Integer> sharps;
    private final List<Integer> flats;

    Clef(String sign, Phrase words, int top, int line, List<Integer> sharps, List<Integer> flats) {
        this.sign = sign;
        this.words = words;
        this.top = top;
        this.line = line;
        this.sharps = sharps;
        this.flats = flats;
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

    int middle() {
        return top - (LINES - 1);
    }

    Drawn.Sign drawn() {
        return new Drawn.Sign("clef", words, MusicSign.named(sign), 0, line);
    }

    /** Where the signs of a key stand, in the order in which they are written. Common practice, no source. */
    List<Integer> signature(int count) {
        return (count > 0 ? sharps : flats).subList(0, Math.abs(count));
    }
}
