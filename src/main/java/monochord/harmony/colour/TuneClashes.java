package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Progression;
import monochord.harmony.melody.FitNote;
import monochord.harmony.melody.Melody;
import monochord.harmony.melody.Trial;
import monochord.theory.Chord;

/** What the tune has to say to each chord in each place; nothing where there is no tune. */
final class TuneClashes {
    private final Trial trial;

    /** @param melody the tune, or null */
    TuneClashes(Melody melody, Progression progression) {
        this.trial = melody == null ? null : Trial.of(melody, progression);
    }

    /** What the notes that clash weigh if {@code chord} stands in that place and all others stay. */
    int friction(int at, Chord chord) {
        return trial == null ? 0 : trial.friction(at, chord);
    }

    List<FitNote> clashes(int at, Chord chord) {
        return trial == null ? new ArrayList<>() : trial.clashes(at, chord);
    }
}
