package monochord.harmony.colour;

import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

/** What a changed chord counts by itself, wherever it stands; see {@link Recolour} for the formula. */
final class ChordScore {
    private ChordScore() {}

    /** @param last whether it is the last chord of the progression */
    static int inPlaceOf(ChordOption plain, ChordOption shade, Key key, boolean last) {
        if (shade.isPlain()) {
            return 0;
        }
        return of(shade, key)
                - (leavesHome(plain, shade) ? RecolourWeights.HOME : 0)
                - (last ? RecolourWeights.END : 0);
    }

    static boolean leavesHome(ChordOption plain, ChordOption shade) {
        return plain.root.equals(Degree.of(1, 0)) && !shade.root.equals(plain.root);
    }

    private static int of(ChordOption shade, Key key) {
        return RecolourWeights.STABLE * firm(shade, key)
                + (isBorrowed(shade) ? RecolourWeights.BORROWED : 0)
                - RecolourWeights.FARTHER * farther(shade)
                - RecolourWeights.CHANGE;
    }

    static boolean isBorrowed(ChordOption shade) {
        return shade.colour == Colour.BORROWED;
    }

    /** Degrees it changes beyond the first. */
    static int farther(ChordOption shade) {
        return isBorrowed(shade) ? Math.max(0, Long.bitCount(shade.outside) - 1) : 0;
    }

    /** Tones beyond the triad that are the first, third or fifth of the key. */
    static int firm(ChordOption shade, Key key) {
        Chord chord = shade.chord;
        Chord triad = new Chord(chord.root(), chord.kind().triad());
        int firm = 0;
        for (NoteName tone : chord.tones()) {
            boolean added = shade.isSuspendedFourth() ? isFourth(tone, chord) : !triad.holds(tone);
            firm += added && ChordOptions.isStable(tone, key) ? 1 : 0;
        }
        return firm;
    }

    private static boolean isFourth(NoteName tone, Chord chord) {
        return chord.root().fifths() - tone.fifths() == 1;
    }
}
