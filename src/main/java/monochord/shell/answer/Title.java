package monochord.shell.answer;

import java.util.Optional;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;

/** What something that sounds is called in a sentence. */
public interface Title {
    String write(Look look);

    static Title of(Music music) {
        if (music instanceof Music.OneChord one) {
            return look -> one.chord().write(look.signs());
        } else if (music instanceof Music.OneScale one) {
            return look -> one.scale().write(look.signs());
        } else if (music instanceof Music.OneProgression one) {
            return of(one.progression());
        }
        return look -> Words.notes(((Music.Notes) music).names(), look);
    }

    static Title of(Progression progression) {
        return look ->
                progression.symbols(look.signs()) + " in " + progression.key().write(look.signs());
    }

    static Title of(Melody melody, Optional<Progression> chords) {
        return look -> melody.write(look.signs())
                + chords.map(under -> " over " + of(under).write(look)).orElse("");
    }

    /** This, with words before and behind it. */
    default Title within(String before, String behind) {
        return look -> before + write(look) + behind;
    }
}
