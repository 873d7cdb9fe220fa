package monochord.shell.keyboard;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.view.Look;
import monochord.view.keyboard.MarkedKey;
import monochord.view.keyboard.MovingKeyboard;
import monochord.view.keyboard.ToneRole;
import monochord.view.keyboard.ToneRoles;

/**
 * The keys that are held, as a picture with a line above it.
 *
 * @param keyboard the stretch that is drawn
 * @param keys that are down, bottom to top
 * @param key in which they are spelled and named
 * @param named whether the chord they make is to be named
 * @param row chords played so far that belong together
 * @param rowLength how many it will be
 */
record HeldKeysPicture(
        MovingKeyboard keyboard, List<Integer> keys, Key key, boolean named, List<Chord> row, int rowLength) {

    StyledText picture(Look look) {
        Spelling spelling = new Spelling(key);
        List<NoteName> names = spelling.names(keys);
        Optional<Chord> chord = named ? spelling.chord(names) : Optional.empty();
        StyledLine caption =
                row.isEmpty() ? chord.map(held -> caption(held, look)).orElse(StyledLine.EMPTY) : soFar(look.signs());
        List<MarkedKey> marks = marks(Spelling.pitches(names, keys), chord);
        return StyledText.of(caption).plus(keyboard.draw(marks, look.reader(), look.pictureWidth()));
    }

    private static List<MarkedKey> marks(List<Pitch> pitches, Optional<Chord> chord) {
        return chord.map(held -> ToneRoles.marked(pitches, held))
                .orElseGet(() -> pitches.stream()
                        .map(pitch -> new MarkedKey(pitch, ToneRole.NONE))
                        .toList());
    }

    private StyledLine caption(Chord chord, Look look) {
        StyledLine name = StyledLine.of(chord.write(look.signs()), Style.STRONG);
        StyledLine whole = name.plus(
                "  " + Numeral.of(chord, key).write(look.signs()) + " in " + key.write(look.signs()), Style.QUIET);
        return whole.columns() <= look.pictureWidth() ? whole : name;
    }

    private StyledLine soFar(Signs signs) {
        String chords = row.stream().map(chord -> chord.write(signs)).collect(Collectors.joining(" "));
        return StyledLine.of(row.size() + " of " + rowLength + ": ", Style.QUIET)
                .plus(chords, Style.STRONG);
    }
}
