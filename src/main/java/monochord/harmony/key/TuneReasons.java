package monochord.harmony.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** What in a tune speaks for a key, in sentences that are true of its notes. */
final class TuneReasons {
    private static final Degree LEADING_NOTE = Degree.of(7, 0);
    private static final int HALF_STEP = 1;
    private static final int FEW = 3;
    private static final double HALF = 0.5;

    private final TuneEvidence tune;
    private final Key key;

    private TuneReasons(TuneEvidence tune, Key key) {
        this.tune = tune;
        this.key = key;
    }

    /** @param key with the mode that the tune has */
    static List<Phrase> of(TuneEvidence tune, Key key) {
        TuneReasons reasons = new TuneReasons(tune, key);
        List<Phrase> said = new ArrayList<>();
        said.add(reasons.ends());
        reasons.leadingNote().ifPresent(said::add);
        reasons.tonicChord().ifPresent(said::add);
        said.add(reasons.scale());
        return said;
    }

    private Phrase ends() {
        NoteName first = tune.first();
        NoteName last = tune.last();
        if (!last.equals(key.tonic())) {
            return first.equals(key.tonic())
                    ? Phrase.sentence("It begins on {0}, the tonic, and ends on {1}.", first, last)
                    : Phrase.sentence("It ends on {0}, the {1} of the scale.", last, degree(last));
        }
        return first.equals(last)
                ? Phrase.sentence("It begins and ends on {0}, the tonic.", last)
                : first.equals(key.note(5))
                        ? Phrase.sentence("It ends on {0}, the tonic, and begins on {1}, the fifth.", last, first)
                        : Phrase.sentence("It ends on {0}, the tonic.", last);
    }

    private Phrase degree(NoteName note) {
        Degree degree = key.degreeOf(note);
        return key.holds(note) ? Phrase.inWords(Degree.of(degree.number(), 0)) : Phrase.inWords(degree);
    }

    private Optional<Phrase> leadingNote() {
        NoteName leading = key.note(LEADING_NOTE);
        List<MelodyNote> notes = tune.notes();
        for (int i = 1; i < notes.size(); i++) {
            Pitch before = notes.get(i - 1).pitch();
            Pitch here = notes.get(i).pitch();
            boolean rises = here.midiNumber() - before.midiNumber() == HALF_STEP;
            if (rises && before.name().equals(leading) && here.name().equals(key.tonic())) {
                return Optional.of(Phrase.sentence("The leading note {0} rises to {1}.", leading, key.tonic()));
            }
        }
        return Optional.empty();
    }

    private Optional<Phrase> tonicChord() {
        List<NoteName> chord = List.of(key.tonic(), key.note(3), key.note(5));
        double share = chord.stream().mapToDouble(tune.tones()::of).sum();
        boolean allSound = chord.stream().allMatch(note -> tune.tones().of(note) > 0);
        return allSound && share > HALF
                ? Optional.of(Phrase.sentence(
                        "{0}, the notes of the tonic chord, sound more than half of the time.", Phrase.list(chord)))
                : Optional.empty();
    }

    private Phrase scale() {
        List<NoteName> foreign = tune.tones().fifths().stream()
                .map(NoteName::at)
                .filter(note -> !key.holds(note))
                .toList();
        if (foreign.isEmpty()) {
            return Phrase.sentence("All its notes are in {0}.", key);
        }
        return foreign.size() <= FEW
                ? Phrase.sentence("All its notes but {0} are in {1}.", Phrase.list(foreign), key)
                : Phrase.counted(
                        foreign.size(),
                        "{0} note name is from outside {1}.",
                        "{0} note names are from outside {1}.",
                        foreign.size(),
                        key);
    }
}
