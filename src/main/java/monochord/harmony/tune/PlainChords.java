package monochord.harmony.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * The chords that are looked at under a tune: the key's own triads and the dominant seventh; and where the tune sings a
 * note from outside the scale, the plain chord that brings it. Common practice, no source.
 *
 * @param note the note that has to sound for the chord to be looked at, or null
 */
record PlainChords(Chord chord, NoteName note) {
    private static final int DEGREES = 7;
    private static final List<String> MAJOR = List.of("I", "V", "IV", "ii", "vi", "iii", "V7");
    private static final List<String> MINOR = List.of("i", "V", "iv", "VI", "VII", "III", "v", "iio", "V7");

    static List<PlainChords> of(Key key) {
        if (key.mode() == Mode.IONIAN) {
            return Stream.concat(
                            plain(MAJOR, key),
                            Stream.of(
                                    bringing("#4", "V7/V", key),
                                    bringing("b7", "V7/IV", key),
                                    bringing("b7", "bVII", key),
                                    bringing("#5", "V7/vi", key),
                                    bringing("#1", "V7/ii", key),
                                    bringing("#2", "V7/iii", key),
                                    bringing("b6", "iv", key)))
                    .toList();
        } else if (key.mode() == Mode.AEOLIAN) {
            return Stream.concat(
                            plain(MINOR, key),
                            Stream.of(
                                    bringing("3", "V7/iv", key),
                                    bringing("6", "IV", key),
                                    bringing("#4", "V7/V", key),
                                    bringing("b2", "bII", key)))
                    .toList();
        }
        return ofMode(key);
    }

    private static Stream<PlainChords> plain(List<String> numerals, Key key) {
        return numerals.stream()
                .map(numeral -> new PlainChords(Numeral.parse(numeral).in(key), null));
    }

    private static PlainChords bringing(String degree, String numeral, Key key) {
        return new PlainChords(Numeral.parse(numeral).in(key), key.note(Degree.parse(degree)));
    }

    /** The major and minor triads of the scale, and the chord on its tonic whatever it is. */
    private static List<PlainChords> ofMode(Key key) {
        List<PlainChords> chords = new ArrayList<>();
        for (int degree = 1; degree <= DEGREES; degree++) {
            for (ChordKind kind : List.of(ChordKind.MAJOR, ChordKind.MINOR, ChordKind.DIMINISHED)) {
                Chord chord = new Chord(key.note(degree), kind);
                if (key.isOwn(chord) && (degree == 1 || !kind.equals(ChordKind.DIMINISHED))) {
                    chords.add(new PlainChords(chord, null));
                }
            }
        }
        return chords;
    }

    boolean isFor(TuneSlot slot) {
        return note == null || slot.sounds(note);
    }

    /** The same chord with the seventh that the scale has above it. */
    static Optional<Chord> withSeventh(Chord triad, Key key) {
        return Stream.of(Interval.MINOR_SEVENTH, Interval.MAJOR_SEVENTH)
                .map(triad.kind()::with)
                .flatMap(Optional::stream)
                .map(kind -> new Chord(triad.root(), kind))
                .filter(key::isOwn)
                .findFirst();
    }
}
