package monochord.view;

import java.util.Optional;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.theory.Signs;

/**
 * What something that sounds is called in a sentence.
 *
 * @param text with the signs of print
 */
public record Title(String text) {
    public static Title of(Music music) {
        if (music instanceof Music.OneChord one) {
            return new Title(one.chord().write(Signs.MUSIC));
        } else if (music instanceof Music.OneScale one) {
            return new Title(one.scale().write(Signs.MUSIC));
        } else if (music instanceof Music.OneProgression one) {
            return of(one.progression());
        }
        return new Title(Words.joined(((Music.Notes) music).names(), " ", note -> note.write(Signs.MUSIC)));
    }

    public static Title of(Progression progression) {
        return new Title(
                progression.symbols(Signs.MUSIC) + " in " + progression.key().write(Signs.MUSIC));
    }

    public static Title of(Melody melody, Optional<Progression> chords) {
        return new Title(melody.write(Signs.MUSIC)
                + chords.map(under -> " over " + of(under)).orElse(""));
    }

    /** This, with words before and behind it. */
    public Title within(String before, String behind) {
        return new Title(before + text + behind);
    }

    @Override
    public String toString() {
        return text;
    }
}
