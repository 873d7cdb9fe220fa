package monochord.harmony.melody;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.TriadQuality;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

/**
 * How a note stands over a chord when it is held there, whatever comes before and after.
 *
 * <p>A tone of the chord fits. A note that rubs a half step above a tone of the chord clashes. Most others colour the
 * chord; a fourth over a major third does so only as a suspension, and a few colours are sharp enough to be meant. What
 * sounds decides, not the spelling.
 *
 * <p>Source: none; common practice of players who match scales to chords, and so advice.
 */
public enum Standing {
    CHORD_TONE(Phrase.of("chord tone")),
    /** Usable colour: a ninth, a raised eleventh, a thirteenth, a seventh. */
    COLOUR(Phrase.of("usable colour")),
    /** A colour with an edge: a major seventh over a minor chord, a ninth over a diminished one. */
    TENSE(Phrase.of("tense colour")),
    /** The fourth over a major third: good as a suspension, not to rest on. */
    SUSPENSION_ONLY(Phrase.of("suspension only")),
    CLASH(Phrase.of("clash"));

    private static final int OCTAVE = 12;
    private static final int MINOR_SEVENTH = 10;
    private static final int MAJOR_SEVENTH = 11;

    /** One letter for each half step above the root, from the root up: Chord, colour, tense, suspension, x clash. */
    private static final Map<TriadQuality, String> ABOVE_ROOT = Map.of(
            TriadQuality.MAJOR, "CxcxCscCxccc",
            TriadQuality.MINOR, "CxcCxcxCxcct",
            TriadQuality.DIMINISHED, "CxtCxcCxcccx",
            TriadQuality.AUGMENTED, "CxcxCxcxCxcc",
            TriadQuality.SUSPENDED, "CxctxCxCxcct",
            TriadQuality.OPEN, "CxccccxCxccc");

    /** A second in place of the third: the tune may sing the third that the chord leaves out. */
    private static final String ABOVE_SUSPENDED_SECOND = "CxCxccxCxcct";

    private final Phrase words;

    Standing(Phrase words) {
        this.words = words;
    }

    public static Standing of(NoteName note, Chord chord) {
        int keys = keys(chord);
        int above = above(note, chord.root());
        if (holds(keys, above) || note.soundsLike(chord.bass())) {
            return CHORD_TONE;
        }
        return rubs(keys, above) ? CLASH : beside(keys, above, chord.kind().quality());
    }

    private static Standing beside(int keys, int above, TriadQuality quality) {
        boolean second = quality == TriadQuality.SUSPENDED && !holds(keys, 5);
        String row = second ? ABOVE_SUSPENDED_SECOND : ABOVE_ROOT.get(quality);
        return switch (row.charAt(above)) {
            case 't' -> TENSE;
            case 's' -> SUSPENSION_ONLY;
            case 'x' -> CLASH;
            case 'C' -> holds(keys, above - 1) || holds(keys, above + 1) ? CLASH : COLOUR;
            default -> COLOUR;
        };
    }

    /** Beyond the triad: a half step above an added tone, or one seventh against the other. */
    private static boolean rubs(int keys, int above) {
        boolean addedBelow = (above == 3 || above == 10 || above == 11) && holds(keys, above - 1);
        return addedBelow || above == MINOR_SEVENTH && holds(keys, MAJOR_SEVENTH);
    }

    private static int above(NoteName note, NoteName root) {
        return Math.floorMod(note.pitchClass() - root.pitchClass(), OCTAVE);
    }

    private static boolean holds(int keys, int above) {
        return (keys >> Math.floorMod(above, OCTAVE) & 1) != 0;
    }

    private static int keys(Chord chord) {
        int keys = 0;
        for (NoteName tone : chord.tones()) {
            keys |= 1 << above(tone, chord.root());
        }
        return keys;
    }

    /** The degrees of the key's own scale whose notes stand so over the chord, from the tonic up. */
    public static List<Degree> degrees(Chord chord, Key key, Standing standing) {
        return IntStream.rangeClosed(1, 7)
                .mapToObj(key.mode()::degree)
                .filter(degree -> of(key.note(degree), chord) == standing)
                .toList();
    }

    /** Whether a tune can rest on it. */
    public boolean isRestful() {
        return this == CHORD_TONE || this == COLOUR;
    }

    public Phrase inWords() {
        return words;
    }

    @Override
    public String toString() {
        return words.toString();
    }
}
