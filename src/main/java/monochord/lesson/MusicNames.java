package monochord.lesson;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Reads the names of notes, chords and keys that an author has marked in running text. */
final class MusicNames {
    private MusicNames() {}

    /** Whether what stands in a fill is music as it is: it begins as the name of a note does. */
    static boolean begin(String inside) {
        return !inside.isEmpty() && "ABCDEFG".indexOf(inside.charAt(0)) >= 0;
    }

    /**
     * A key such as {@code D minor}, or notes and chords in a row: {@code F A C}, {@code Bbmaj7}.
     *
     * @throws Unreadable if one of them can be read as none of these
     */
    static Phrase of(String text) {
        try {
            return text.indexOf(' ') > 0 ? Phrase.of("{0}", Key.parse(text)) : Phrase.row(List.of(one(text)));
        } catch (Unreadable noKey) {
            return row(text);
        }
    }

    private static Phrase row(String text) {
        List<Object> names = new ArrayList<>();
        for (String word : text.split(" ")) {
            names.add(one(word));
        }
        return Phrase.row(names);
    }

    private static Object one(String word) {
        try {
            return NoteName.parse(word);
        } catch (Unreadable noNote) {
            return Chord.parse(word);
        }
    }
}
