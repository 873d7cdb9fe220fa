package monochord.harmony.key;

import java.util.Optional;
import java.util.Set;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

/**
 * Which mode a tune is in, once its tonic and its third are found. Another mode than major or minor is named only where
 * its own degree really sounds and the degree of major or minor never does.
 *
 * <p>Source for what tells the modes apart: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "scales2".
 *
 * @param mode the mode that is told from major or minor
 * @param own the degree that only it has
 * @param other the degree that major or minor has instead
 */
record ModeOfTune(Mode mode, Degree own, Degree other) {
    private static final ModeOfTune MIXOLYDIAN = of(Mode.MIXOLYDIAN, "b7", "7");
    private static final ModeOfTune LYDIAN = of(Mode.LYDIAN, "#4", "4");
    private static final ModeOfTune DORIAN = of(Mode.DORIAN, "6", "b6");
    private static final ModeOfTune PHRYGIAN = of(Mode.PHRYGIAN, "b2", "2");
    private static final Degree LEADING_NOTE = Degree.of(7, 0);

    private static ModeOfTune of(Mode mode, String own, String other) {
        return new ModeOfTune(mode, Degree.parse(own), Degree.parse(other));
    }

    /**
     * @param key major or minor
     * @param tune what the tune sounds
     * @param sounding what sounds in tune and chords, as places on the line of fifths
     * @return nothing if it is just major or minor
     */
    static Optional<ModeOfTune> in(Key key, ToneShares tune, Set<Integer> sounding) {
        ModeOfTune bright = key.isMinor() ? DORIAN : LYDIAN;
        ModeOfTune dark = key.isMinor() ? PHRYGIAN : MIXOLYDIAN;
        boolean isBright = bright.soundsIn(key, tune, sounding);
        boolean isDark = dark.soundsIn(key, tune, sounding);
        // The raised sixth before the leading note is melodic minor.
        boolean melodic = key.isMinor() && sounds(key.note(LEADING_NOTE), sounding);
        return isBright == isDark || melodic ? Optional.empty() : Optional.of(isBright ? bright : dark);
    }

    private boolean soundsIn(Key key, ToneShares tune, Set<Integer> sounding) {
        return tune.of(key.note(own)) >= KeyWeights.OWN_DEGREE && !sounds(key.note(other), sounding);
    }

    private static boolean sounds(NoteName note, Set<Integer> sounding) {
        return sounding.contains(note.fifths());
    }

    Phrase why(Key key) {
        Key named = key.parallel(mode);
        return Phrase.sentence(
                "{0} sounds and {1} never does: that makes it {2}.", key.note(own), key.note(other), named);
    }
}
