package monochord.shell.keyboard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.ChordNames;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * Gives keys of the keyboard their letters, for fingers do not spell.
 *
 * <p>In a key each black key has one likely name: those of the flatter side down to the lowered second, and the raised fourth.
 * Common practice, no source; it is the stretch of the line of fifths from five below the tonic to six above. A chord that can
 * be named is spelled as its name says.
 */
record Spelling(Key key) {
    private static final int FLATTEST = -5;
    private static final int KEYS = 12;
    private static final int LOWEST_OCTAVE = -1;

    NoteName name(int midiNumber) {
        int flattest = key.tonic().fifths() + FLATTEST;
        int up = Math.floorMod(7 * (midiNumber - NoteName.at(flattest).pitchClass()), KEYS);
        return NoteName.at(flattest + up);
    }

    /** One name for each key, in their order, the lowest of a chord first. */
    List<NoteName> names(Collection<Integer> keys) {
        List<NoteName> plain = keys.stream().map(this::name).toList();
        List<NoteName> tones = chord(plain).map(Spelling::tones).orElse(List.of());
        return among(tones, keys);
    }

    /** The names out of these that stand on the keys; where none does, the key's own. */
    List<NoteName> among(List<NoteName> wanted, Collection<Integer> keys) {
        return keys.stream()
                .map(midiNumber -> wanted.stream()
                        .filter(name -> name.pitchClass() == Math.floorMod(midiNumber, KEYS))
                        .findFirst()
                        .orElseGet(() -> name(midiNumber)))
                .toList();
    }

    static List<NoteName> tones(Chord chord) {
        return Stream.concat(chord.tones().stream(), Stream.of(chord.bass())).toList();
    }

    /** What these notes, of which the first is the lowest, are called in the key; nothing for fewer than three. */
    Optional<Chord> chord(List<NoteName> names) {
        return names.stream().distinct().count() < 3
                ? Optional.empty()
                : ChordNames.of(names, key).stream().findFirst().map(ChordNames.Name::chord);
    }

    /** The names at the heights of the keys. */
    static List<Pitch> pitches(List<NoteName> names, Collection<Integer> keys) {
        List<Pitch> pitches = new ArrayList<>();
        int i = 0;
        for (int midiNumber : keys) {
            pitches.add(pitch(names.get(i++), midiNumber));
        }
        return pitches;
    }

    private static Pitch pitch(NoteName name, int midiNumber) {
        Pitch somewhere = new Pitch(name, 4);
        int octave = 4 + Math.floorDiv(midiNumber - somewhere.midiNumber(), KEYS);
        boolean tooLow = octave < LOWEST_OCTAVE; // B sharp on the very lowest C
        return tooLow ? pitch(name.simplest(), midiNumber) : new Pitch(name, octave);
    }
}
