package monochord.harmony.colour;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.melody.FitNote;
import monochord.harmony.melody.FitTrial;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;

/** What the tune has to say to each change; nothing where there is no tune. */
final class TuneFit {
    private final FitTrial trial;

    TuneFit(Optional<Melody> melody, Progression progression) {
        this.trial = melody.map(tune -> FitTrial.of(tune, progression)).orElse(null);
    }

    /** What clashes with the tune weigh more than before; below 0 for less. */
    int added(Change change) {
        return trial == null ? 0 : trial.added(change.changedFrom(), change.changedTo(), change.spans());
    }

    /** The same with what rubs though it passes for an embellishment, by half. */
    int price(Change change) {
        if (trial == null) {
            return 0;
        }
        int rubs = trial.addedRubs(change.changedFrom(), change.changedTo(), change.spans());
        return RecolourWeights.CLASH * added(change) + rubs / RecolourWeights.RUBS_FOR_ONE;
    }

    List<FitNote> clashes(Change change) {
        return trial == null ? List.of() : trial.clashes(change.changedFrom(), change.changedTo(), change.spans());
    }

    Optional<Phrase> sentence(Change change) {
        int added = added(change);
        if (trial == null || added == 0) {
            return Optional.empty();
        }
        return Optional.of(
                added > 0
                        ? Phrase.sentence("More of the tune clashes than before.")
                        : Phrase.sentence("Less of the tune clashes than before."));
    }
}
