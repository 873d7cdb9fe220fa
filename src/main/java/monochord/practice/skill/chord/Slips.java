package monochord.practice.skill.chord;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.practice.Misconception;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Own;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.NoteName;

/** Wrong procedures that happen with every kind of fuller chord. */
final class Slips {
    private final Chord chord;
    private final List<Slip<Tones>> slips = new ArrayList<>();

    Slips(Chord chord) {
        this.chord = chord;
    }

    Slips add(Misconception misconception, Optional<ChordKind> kind, String said) {
        kind.ifPresent(other -> add(misconception, new Chord(chord.root(), other).tones(), () -> said));
        return this;
    }

    Slips add(Misconception misconception, List<NoteName> notes, Supplier<String> said) {
        slips.add(new Slip<>(misconception, Tones.of(notes), said));
        return this;
    }

    /** The letters without the accidentals that the distances ask for, with the root's own and without. */
    Slips lettersOnly(Supplier<String> distances) {
        List<NoteName> bare = Own.bare(chord.tones());
        List<NoteName> rooted = new ArrayList<>(bare);
        rooted.set(0, chord.root());
        add(Misconception.LETTERS_ONLY, rooted, () -> "The letters are right; now the sizes. " + distances.get());
        add(
                Misconception.LETTERS_ONLY,
                bare,
                () -> "The letters are right, the root has lost its accidental: begin on " + Say.note(chord.root())
                        + ".");
        return this;
    }

    List<Slip<Tones>> all() {
        return slips;
    }
}
