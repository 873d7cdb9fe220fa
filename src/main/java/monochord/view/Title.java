package monochord.view;

import java.util.Optional;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;

/** What something that sounds is called in a sentence. */
public final class Title {
    private Title() {}

    public static Phrase of(Music music) {
        if (music instanceof Music.OneChord one) {
            return Phrase.of("{0}", one.chord());
        } else if (music instanceof Music.OneScale one) {
            return Phrase.of("{0}", one.scale());
        } else if (music instanceof Music.OneProgression one) {
            return of(one.progression());
        }
        return Phrase.row(((Music.Notes) music).names());
    }

    public static Phrase of(Progression progression) {
        return Phrase.of("{0} in {1}", Phrase.row(progression.symbols()), progression.key());
    }

    public static Phrase of(Melody melody, Optional<Progression> chords) {
        return chords.map(under -> Phrase.of("{0} over {1}", melody, of(under)))
                .orElseGet(() -> Phrase.of("{0}", melody));
    }
}
