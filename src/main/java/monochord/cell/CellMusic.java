package monochord.cell;

import java.util.List;
import monochord.harmony.Borrowing;
import monochord.harmony.Music;
import monochord.harmony.voicing.VoicedProgression;
import monochord.theory.Key;

/** Music that a value of a cell is. */
public sealed interface CellMusic {
    /** What it is to the ear. */
    Music heard();

    /** A chord, scale, row of notes or progression, seen in a key. */
    record InKey(Music heard, Key key) implements CellMusic {}

    /** A key. */
    record OneKey(Key key) implements CellMusic {
        @Override
        public Music heard() {
            return new Music.OneScale(key.scale());
        }
    }

    /**
     * Chords that a key borrows.
     *
     * @param chords at least one
     */
    record BorrowedChords(Key key, List<Borrowing.Borrowed> chords, Music heard) implements CellMusic {
        public BorrowedChords {
            chords = List.copyOf(chords);
        }
    }

    /** A progression with its voicing. */
    record Voiced(VoicedProgression voicing, Music heard) implements CellMusic {}
}
