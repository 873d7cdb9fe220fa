package monochord.harmony.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.ChordFunction;
import monochord.harmony.HarmonicFunction;
import monochord.harmony.tune.TuneSlot.SlotNote;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Why a chord stands under a stretch of a tune, in sentences that are true of that place. */
final class SlotReasons {
    private SlotReasons() {}

    /** What it does to the notes there. */
    static List<Phrase> ofNotes(Chord chord, TuneSlot slot) {
        List<NoteName> held = names(slot, chord, true);
        List<NoteName> foreign = names(slot, chord, false);
        if (slot.notes().isEmpty()) {
            return List.of(Phrase.sentence("The tune rests here."));
        }
        List<Phrase> said = new ArrayList<>();
        Optional<SlotNote> beginning =
                slot.notes().stream().filter(SlotNote::isStrong).findFirst();
        if (held.isEmpty()) {
            said.add(Phrase.sentence("It holds none of the notes here."));
        } else if (foreign.isEmpty() && held.size() > 1) {
            said.add(Phrase.sentence("It holds every note here: {0}.", Phrase.list(held)));
        } else {
            said.add(role(held, chord));
        }
        beginning
                .filter(note -> foreign.contains(note.name()))
                .ifPresent(note -> said.add(
                        note.rubs(chord)
                                ? Phrase.sentence("{0} rubs against it as it begins.", note.name())
                                : Phrase.sentence("{0} leans on it as it begins.", note.name())));
        return said;
    }

    private static Phrase role(List<NoteName> held, Chord chord) {
        List<Phrase> roles = held.stream().map(note -> role(note, chord)).toList();
        return Phrase.sentence("{0}.", Phrase.list(roles));
    }

    private static Phrase role(NoteName note, Chord chord) {
        Interval above = chord.root().to(note);
        return switch (above.number()) {
            case 1 -> Phrase.of("{0} is its root", note);
            case 3 -> Phrase.of("{0} is its third", note);
            case 5 -> Phrase.of("{0} is its fifth", note);
            default -> Phrase.of("{0} is its seventh", note);
        };
    }

    private static List<NoteName> names(TuneSlot slot, Chord chord, boolean held) {
        return slot.notes().stream()
                .map(SlotNote::name)
                .filter(note -> chord.holds(note) == held)
                .distinct()
                .toList();
    }

    /** What it does between the chord before and the chord behind. */
    static Optional<Phrase> ofCourse(List<Chord> chords, int place, TuneSlot slot, Key key) {
        Chord chord = chords.get(place);
        boolean isTonic = isTonic(chord, key);
        if (place == chords.size() - 1) {
            return isTonic ? Optional.of(Phrase.sentence("The tune ends at home.")) : Optional.empty();
        }
        if (slot.isRest() && ChordFunction.of(chord, key).isDominantOfKey()) {
            return Optional.of(Phrase.sentence("The phrase comes to rest on the dominant, open."));
        }
        if (slot.isRest() && isTonic) {
            return Optional.of(Phrase.sentence("The phrase comes to rest at home."));
        }
        Chord next = chords.get(place + 1);
        return next.equals(chord) ? Optional.empty() : leading(chord, next, key);
    }

    private static boolean isTonic(Chord chord, Key key) {
        return chord.root().equals(key.tonic()) && ChordFunction.of(chord, key).main() == HarmonicFunction.TONIC;
    }

    /** Where it leads, if that is a dominant, a step before one, or the plagal way home. */
    static Optional<Phrase> leading(Chord chord, Chord next, Key key) {
        Numeral goal = Numeral.of(chord, key).target();
        ChordFunction function = ChordFunction.of(chord, key);
        if (goal != null && goal.in(key).root().equals(next.root())) {
            return Optional.of(Phrase.sentence("It leads to {0} as its dominant.", next));
        } else if (function.isDominantOfKey() && isTonic(next, key)) {
            return Optional.of(Phrase.sentence("It leads home to {0}.", next));
        } else if (function.main() == HarmonicFunction.SUBDOMINANT
                && ChordFunction.of(next, key).isDominantOfKey()) {
            return Optional.of(Phrase.sentence("It prepares {0}.", next));
        }
        return chord.root().equals(key.note(4)) && isTonic(next, key)
                ? Optional.of(Phrase.sentence("It goes home to {0} the plagal way.", next))
                : Optional.empty();
    }
}
