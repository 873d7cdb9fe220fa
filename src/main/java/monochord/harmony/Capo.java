package monochord.harmony;

import java.util.Comparator;
import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Interval;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.Signs;

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

    /** Why it is worth taking or leaving, a clause with the signs of printed music. */
    public String reason() {
        List<String> barred = shapes.chords().stream()
                .filter(chord -> !ringsOpen(chord))
                .map(chord -> chord.write(Signs.MUSIC))
                .distinct()
                .toList();
        String open = barred.isEmpty() ? "every chord rings open" : "all open but " + String.join(", ", barred);
        return (openChords() == 0 ? "no chord rings open" : open) + "; " + neck();
    }

    private String neck() {
        return fret == 0
                ? "no capo needed"
                : fret <= LOW
                        ? "low, so most of the neck stays"
                        : fret <= HIGH ? "high, and the frets grow narrow" : "very high and thin, a last resort";
    }
}
