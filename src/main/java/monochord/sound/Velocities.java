package monochord.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import monochord.score.Hand;
import monochord.score.Sounding;

/**
 * How hard each key is struck: what lies inside a chord moderately, the bass a little harder, the top harder still, so
 * that the outer voices lead. A tune is harder than all, and under it the top of the chords steps back; the notes of a
 * broken chord stay inside. Common practice, no source.
 */
final class Velocities {
    static final int INNER = 66;
    static final int BASS = 74;
    static final int TOP = 80;
    static final int TUNE = 92;

    private final boolean tune;
    private final boolean leftHand;
    private final List<SoundingKey> places = new ArrayList<>();

    /** A note among all that sound together with it for a while. */
    private static final class SoundingKey {
        private final Sounding sounding;
        private boolean covered;
        private boolean borne;
        private boolean accompanied;

        SoundingKey(Sounding sounding) {
            this.sounding = sounding;
        }

        private void meet(SoundingKey other) {
            int above = Integer.compare(note(), other.note());
            covered |= above < 0;
            borne |= above > 0;
            accompanied |= other.sounding.hand() == sounding.hand();
        }

        private int note() {
            return sounding.pitch().midiNumber();
        }

        private boolean isIn(Hand hand) {
            return sounding.hand() == hand;
        }
    }

    private Velocities(List<Sounding> soundings) {
        tune = soundings.stream().anyMatch(one -> one.hand() == Hand.TUNE);
        leftHand = soundings.stream().anyMatch(one -> one.hand() == Hand.LEFT);
    }

    /** MIDI velocities, one for each, in the same order. */
    static List<Integer> of(List<Sounding> soundings) {
        Velocities touch = new Velocities(soundings);
        soundings.forEach(sounding -> touch.places.add(new SoundingKey(sounding)));
        touch.meet();
        return touch.places.stream().map(touch::of).toList();
    }

    private void meet() {
        List<SoundingKey> sounding = new ArrayList<>();
        List<SoundingKey> inOrder = new ArrayList<>(places);
        inOrder.sort(Comparator.comparing(place -> place.sounding.start()));
        for (SoundingKey place : inOrder) {
            sounding.removeIf(other -> other.sounding.end().compareTo(place.sounding.start()) <= 0);
            if (!place.isIn(Hand.TUNE)) {
                sounding.forEach(other -> meet(place, other));
                sounding.add(place);
            }
        }
    }

    private static void meet(SoundingKey one, SoundingKey other) {
        one.meet(other);
        other.meet(one);
    }

    private int of(SoundingKey place) {
        if (place.isIn(Hand.TUNE)) {
            return TUNE;
        }
        boolean lowest = !place.borne && (place.isIn(Hand.LEFT) || !leftHand && place.covered);
        if (lowest) {
            return BASS;
        }
        boolean broken = place.borne && !place.accompanied;
        return place.covered || broken || tune ? INNER : TOP;
    }
}
