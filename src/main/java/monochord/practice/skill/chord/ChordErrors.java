package monochord.practice.skill.chord;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.practice.Misconception;
import monochord.practice.answer.ModelledError;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.NoteName;

/** Wrong procedures that happen with every kind of fuller chord. */
final class ChordErrors {
    private final Chord chord;
    private final List<ModelledError<Tones>> errors = new ArrayList<>();

    ChordErrors(Chord chord) {
        this.chord = chord;
    }

    ChordErrors add(Misconception misconception, Optional<ChordKind> kind, Phrase said) {
        kind.ifPresent(other -> add(misconception, new Chord(chord.root(), other).tones(), () -> said));
        return this;
    }

    ChordErrors add(Misconception misconception, List<NoteName> notes, Supplier<Phrase> said) {
        errors.add(new ModelledError<>(misconception, Tones.of(notes), said));
        return this;
    }

    /** The letters without the accidentals that the distances ask for, with the root's own and without. */
    ChordErrors lettersOnly(Supplier<Phrase> distances) {
        List<NoteName> bare = DiatonicTriads.bare(chord.tones());
        List<NoteName> rooted = new ArrayList<>(bare);
        rooted.set(0, chord.root());
        add(
                Misconception.LETTERS_ONLY,
                rooted,
                () -> Phrase.sentence("The letters are right; now the sizes.").then(distances.get()));
        add(
                Misconception.LETTERS_ONLY,
                bare,
                () -> Phrase.sentence(
                        "The letters are right, the root has lost its accidental: begin on {0}.", chord.root()));
        return this;
    }

    List<ModelledError<Tones>> all() {
        return errors;
    }
}
