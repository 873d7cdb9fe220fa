package monochord.sound;

import java.util.Comparator;
import java.util.List;
import monochord.score.Sounding;

/**
 * How hard each key is struck: what lies inside a chord moderately, the bass a little harder, the top harder still, so
 * that the outer voices lead. Common practice, no source.
 */
final class Touch {
    static final int INNER = 66;
    static final int BASS = 74;
    static final int TOP = 80;

    private Touch() {}

    /** MIDI velocity of one note among all that start with it. */
    static int of(Sounding sounding, List<Sounding> chord) {
        if (isOuter(sounding, chord, Comparator.naturalOrder())) {
            return TOP;
        }
        return isOuter(sounding, chord, Comparator.reverseOrder()) ? BASS : INNER;
    }

    private static boolean isOuter(Sounding sounding, List<Sounding> chord, Comparator<Integer> order) {
        int note = sounding.pitch().midiNumber();
        return chord.stream().allMatch(other -> order.compare(other.pitch().midiNumber(), note) <= 0);
    }
}
