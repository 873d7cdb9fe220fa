package monochord.text.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.NoteNaming.FoundName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * Examples that are to be typed, in the note names of a country: {@code play Bb F in D} is {@code play Sib Fa in Re}. A word
 * is changed where it reads as a note, a pitch or a chord; accidentals are in ASCII, as they are typed.
 */
public final class ToType {
    private static final Pattern MUSIC = Pattern.compile("(?<![^\\s|,])[A-G][^\\s|,:]*");

    private ToType() {}

    /** @param english what would be typed with English names; no prose, in which a capital A could be a word */
    public static String in(String english, NoteNaming naming) {
        if (naming == NoteNaming.ENGLISH) {
            return english;
        }
        Signs signs = new Signs(true, naming);
        List<Renaming> changes = new ArrayList<>();
        Matcher music = MUSIC.matcher(english);
        while (music.find()) {
            root(music.group()).ifPresent(root -> {
                changes.add(new Renaming(
                        music.start(), music.start() + root.end(), root.name().write(signs)));
                bass(music.group(), music.start(), signs, changes);
            });
        }
        return Renaming.all(changes, english);
    }

    /** The name that a note, a pitch or a chord begins with. */
    private static Optional<FoundName> root(String word) {
        return name(word)
                .flatMap(name -> NoteNaming.ENGLISH.find(word, 0).stream()
                        .filter(found -> found.name().equals(name))
                        .findFirst());
    }

    private static Optional<NoteName> name(String word) {
        try {
            return Optional.of(Chord.parse(word).root());
        } catch (Unreadable noChord) {
            try {
                return Optional.of(Pitch.parse(word).name());
            } catch (Unreadable neither) {
                return Optional.empty();
            }
        }
    }

    private static void bass(String word, int start, Signs signs, List<Renaming> changes) {
        int slash = word.lastIndexOf('/');
        if (slash >= 0) {
            NoteNaming.ENGLISH.find(word, slash + 1).stream()
                    .filter(bass -> bass.end() == word.length())
                    .findFirst()
                    .ifPresent(bass -> changes.add(new Renaming(
                            start + slash + 1, start + bass.end(), bass.name().write(signs))));
        }
    }
}
