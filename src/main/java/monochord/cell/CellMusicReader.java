package monochord.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import monochord.cell.protocol.EncodedValue;
import monochord.cell.protocol.EncodedValue.Shape;
import monochord.harmony.Borrowing;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.harmony.Progression;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.Unvoiced;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * Reads a value that a cell has put into words. The text is read by the same readers as whatever is typed; what they do
 * not take is no music, whatever the cell says.
 *
 * @param here the key of the line
 */
record CellMusicReader(EncodedValue told, Key here) {
    private static final int MOST_CHORDS = 64;
    private static final int LONGEST = 4000;

    /** The music that it is, or nothing. */
    Optional<CellMusic> music() {
        try {
            return told.part(0).length() > LONGEST ? Optional.empty() : Optional.ofNullable(read());
        } catch (Unreadable | Unvoiced | IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private CellMusic read() {
        return switch (told.shape()) {
            case PLAIN -> null;
            case KEY -> new CellMusic.OneKey(key());
            case BORROWED -> borrowed();
            case VOICED -> voiced();
            case CHORD, SCALE, NOTES, PROGRESSION, CHORDS -> new CellMusic.InKey(read(told.part(0)), key());
        };
    }

    /** What it is to the ear, or nothing. */
    Optional<Music> heard() {
        try {
            return told.isMusic() ? Optional.of(sound()) : Optional.empty();
        } catch (Unreadable none) {
            return Optional.empty();
        }
    }

    private Music sound() {
        return told.shape() == Shape.KEY ? new Music.OneScale(key().scale()) : read(told.part(0));
    }

    /** The key it stands in: its own if it has one. */
    Key key() {
        return switch (told.shape()) {
            case PROGRESSION, BORROWED, VOICED -> Key.parse(told.part(1));
            case KEY -> Key.parse(told.part(0));
            case PLAIN -> here;
            case CHORD, SCALE, NOTES, CHORDS -> told.part(1).isEmpty() ? here : Key.parse(told.part(1));
        };
    }

    private Music read(String text) {
        return switch (told.shape()) {
            case CHORD, SCALE, NOTES -> MusicText.read(text, key());
            case PROGRESSION -> new Music.OneProgression(Progression.parse(better(text), key()));
            default -> new Music.OneProgression(Progression.parse(text, key()));
        };
    }

    private String better(String text) {
        return told.part(2).isEmpty() ? text : told.part(2);
    }

    private List<Chord> chords() {
        String[] symbols = told.part(0).split(" ");
        if (symbols.length > MOST_CHORDS) {
            throw new IllegalArgumentException(symbols.length + " chords are more than are drawn");
        }
        List<Chord> chords = new ArrayList<>();
        for (String symbol : symbols) {
            chords.add(Chord.parse(symbol));
        }
        return chords;
    }

    private CellMusic borrowed() {
        return new CellMusic.BorrowedChords(
                key(),
                chords().stream().map(chord -> Borrowing.borrowed(chord, key())).toList(),
                sound());
    }

    /** The search finds the same again, so only the task is told. */
    private CellMusic voiced() {
        List<Optional<Pitch>> tops = new ArrayList<>();
        for (String top : told.part(4).split(" ")) {
            tops.add(top.equals("-") ? Optional.empty() : Optional.of(Pitch.parse(top)));
        }
        VoicingStyle style = VoicingStyle.find(told.part(2)).orElse(VoicingStyle.CLOSE);
        VoicingTask task = new VoicingTask(chords(), key(), style, Reach.parse(told.part(3)), tops, voices());
        return new CellMusic.Voiced(VoicingSearch.best(task), sound());
    }

    private OptionalInt voices() {
        String voices = told.part(5);
        return voices.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(voices));
    }
}
