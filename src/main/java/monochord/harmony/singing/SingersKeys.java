package monochord.harmony.singing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.Transposition;
import monochord.harmony.melody.Melody;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;

/**
 * The keys in which a tune lies well, best first: by how many notes lie outside the voice and how far, by how far from the
 * voice's middle it dwells, by how it reads for those who play, by how far it is from the key that was given.
 *
 * <p>It dwells where its notes are for the middle half of its time. Common practice, no source; the weights are ours.
 */
public final class SingersKeys {
    /** So many are offered, never one. */
    public static final int OFFERED = 3;

    private static final int OCTAVE = 12;

    private final Melody melody;
    private final Key from;
    private final VocalRange range;
    private final List<String> players;

    private SingersKeys(Melody melody, Key from, VocalRange range, List<String> players) {
        this.melody = melody;
        this.from = from;
        this.range = range;
        this.players = players;
    }

    /** @param players instruments by name, perhaps none */
    public static List<SingersKey> of(Melody melody, Key from, VocalRange range, List<String> players) {
        return new SingersKeys(melody, from, range, players).best();
    }

    private List<SingersKey> best() {
        List<SingersKey> all = new ArrayList<>();
        for (int fret = 0; fret < OCTAVE; fret++) {
            nearest(Transposition.inUse(Transposition.shapes(from, fret))).ifPresent(all::add);
        }
        all.sort(ORDER);
        return List.copyOf(all.subList(0, Math.min(OFFERED, all.size())));
    }

    private static final Comparator<SingersKey> ORDER = Comparator.comparingInt(SingersKey::outside)
            .thenComparingInt(SingersKey::farthest)
            .thenComparingDouble(SingersKey::offset)
            .thenComparingInt(SingersKey::readingCost)
            .thenComparingInt(key -> Math.abs(key.up().semitones()))
            .thenComparingDouble(key -> Math.abs(key.offMiddle()));

    /** In the octave that suits the voice best. */
    private Optional<SingersKey> nearest(Key key) {
        List<SingersKey> octaves = new ArrayList<>();
        Interval first = from.tonic().to(key.tonic());
        for (int octaves12 = -3; octaves12 <= 3; octaves12++) {
            Interval up = new Interval(first.fifths(), first.octaves() + octaves12);
            if (isInReach(up)) {
                octaves.add(lying(key, up));
            }
        }
        return octaves.stream().min(ORDER);
    }

    private boolean isInReach(Interval up) {
        return melody.notes().stream().allMatch(note -> {
            int midi = note.pitch().midiNumber() + up.semitones();
            return midi >= OCTAVE && midi < 9 * OCTAVE;
        });
    }

    private SingersKey lying(Key key, Interval up) {
        Melody moved = melody.plus(up);
        int outside = 0;
        int farthest = 0;
        for (Melody.MelodyNote note : moved.notes()) {
            int beyond = Math.abs(range.beyond(note.pitch().midiNumber()));
            outside += beyond > 0 ? 1 : 0;
            farthest = Math.max(farthest, beyond);
        }
        List<Pitch> dwells = middleHalf(moved);
        double middle = (dwells.get(0).midiNumber() + dwells.get(1).midiNumber()) / 2.0;
        List<SingersKey.PartKey> parts = players.stream()
                .map(player -> SingersKey.PartKey.of(player.toLowerCase(Locale.ROOT), key))
                .toList();
        return new SingersKey(key, up, moved, outside, farthest, dwells, middle - range.middle(), parts);
    }

    /** The notes below which it is a quarter and three quarters of its sounding time. */
    private static List<Pitch> middleHalf(Melody melody) {
        List<Melody.MelodyNote> byHeight = new ArrayList<>(melody.notes());
        byHeight.sort(Comparator.comparingInt(note -> note.pitch().midiNumber()));
        double all = byHeight.stream().mapToDouble(SingersKeys::length).sum();
        return List.of(at(all / 4, byHeight), at(3 * all / 4, byHeight));
    }

    private static Pitch at(double time, List<Melody.MelodyNote> byHeight) {
        double passed = 0;
        for (Melody.MelodyNote note : byHeight) {
            passed += length(note);
            if (passed >= time - 1e-9) {
                return note.pitch();
            }
        }
        return byHeight.get(byHeight.size() - 1).pitch();
    }

    private static double length(Melody.MelodyNote note) {
        return (double) note.beats().numerator() / note.beats().denominator();
    }
}
