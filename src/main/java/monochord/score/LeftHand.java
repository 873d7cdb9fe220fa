package monochord.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * The left hand under chords: single bass notes between C2 and E3.
 *
 * <p>The first note is the one nearest to G2. Each further note goes to the octave nearest to the note before; where
 * two are as near, to the one nearer to G2, then to the lower. Common practice, no source.
 */
public final class LeftHand {
    static final Pitch LOWEST = Pitch.parse("C2");
    static final Pitch HIGHEST = Pitch.parse("E3");
    private static final Pitch HOME = Pitch.parse("G2");

    private LeftHand() {}

    /** One pitch for each bass note, in order. */
    public static List<Pitch> follow(List<NoteName> basses) {
        List<Pitch> line = new ArrayList<>();
        Pitch last = HOME;
        for (NoteName bass : basses) {
            last = nearest(bass, last);
            line.add(last);
        }
        return List.copyOf(line);
    }

    private static Pitch nearest(NoteName bass, Pitch last) {
        Comparator<Pitch> nearness = Comparator.comparingInt(pitch -> distance(pitch, last));
        return octaves(bass)
                .min(nearness.thenComparing(pitch -> distance(pitch, HOME)).thenComparing(Comparator.naturalOrder()))
                .orElseThrow();
    }

    private static Stream<Pitch> octaves(NoteName bass) {
        Pitch low = Pitch.atOrAbove(bass, LOWEST);
        Pitch high = low.plus(Interval.OCTAVE);
        return high.midiNumber() > HIGHEST.midiNumber() ? Stream.of(low) : Stream.of(low, high);
    }

    private static int distance(Pitch a, Pitch b) {
        return Math.abs(a.midiNumber() - b.midiNumber());
    }
}
