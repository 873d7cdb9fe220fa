package monochord.harmony;

import java.util.Comparator;
import java.util.List;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * A fret for a guitarist's capo, and the progression in the shapes that are played above it.
 *
 * <p>The distances are arithmetic: what sounds is the shape and so many half steps. That C D E G A and Am Dm Em ring with
 * open strings, and that a low fret keeps most of the neck, is common practice, no source.
 *
 * @param fret from 0, no capo at all, to 11
 */
public record Capo(int fret, Progression shapes) {
    private static final List<String> OPEN_MAJOR = List.of("C", "G", "D", "A", "E");
    private static final List<String> OPEN_MINOR = List.of("A", "E", "D");
    private static final int FRETS_PER_CHORD = 3;
    private static final int LOW = 4;
    private static final int HIGH = 7;

    /** The frets that bring a key with open strings, the best first; a chord to be barred weighs three frets. */
    public static List<Capo> forSounding(Progression sounding) {
        Key key = sounding.key();
        return (key.isMinor() ? OPEN_MINOR : OPEN_MAJOR)
                .stream()
                        .map(tonic -> new Key(NoteName.parse(tonic), key.mode()))
                        .map(shapes -> new Capo(Transposition.fret(key, shapes), sounding.in(shapes)))
                        .sorted(Comparator.comparingInt(Capo::cost).thenComparingInt(Capo::fret))
                        .toList();
    }

    private int cost() {
        return FRETS_PER_CHORD * (shapes.chords().size() - openChords()) + fret;
    }

    private int openChords() {
        return (int) shapes.chords().stream().filter(Capo::ringsOpen).count();
    }

    private static boolean ringsOpen(Chord chord) {
        boolean minor = chord.kind().holds(Interval.MINOR_THIRD);
        boolean fifth = chord.kind().holds(Interval.PERFECT_FIFTH);
        return fifth && (minor ? OPEN_MINOR : OPEN_MAJOR).contains(chord.root().toString());
    }

    /** Why it is worth taking or leaving, a clause. */
    public Phrase reason() {
        return Phrase.of("{0}; {1}", open(), neck());
    }

    private Phrase open() {
        List<Chord> barred = shapes.chords().stream()
                .filter(chord -> !ringsOpen(chord))
                .distinct()
                .toList();
        if (openChords() == 0) {
            return Phrase.of("no chord rings open");
        }
        return barred.isEmpty()
                ? Phrase.of("every chord rings open")
                : Phrase.of("all open but {0}", Phrase.joined(", ", barred));
    }

    private Phrase neck() {
        if (fret == 0) {
            return Phrase.of("no capo needed");
        } else if (fret <= LOW) {
            return Phrase.of("low, so most of the neck stays");
        }
        return fret <= HIGH
                ? Phrase.of("high, and the frets grow narrow")
                : Phrase.of("very high and thin, a last resort");
    }
}
