package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * A progression as a beginner plays it: the right hand takes every chord in root position, each root on the key nearest to
 * the one before between F3 and C5, and the left hand the bass, an octave below.
 */
public final class RootPositions {
    private static final Pitch HOME = Pitch.parse("C4");
    private static final Pitch LOWEST = Pitch.parse("F3");
    private static final Pitch HIGHEST = Pitch.parse("C5");

    private RootPositions() {}

    /** One voicing for each chord. */
    public static List<Voicing> of(List<Chord> chords) {
        List<Voicing> plain = new ArrayList<>();
        Pitch last = HOME;
        for (Chord chord : chords) {
            Pitch root = nearest(chord.root(), last);
            plain.add(voicing(chord, root));
            last = root;
        }
        return List.copyOf(plain);
    }

    private static Voicing voicing(Chord chord, Pitch root) {
        List<Pitch> right = new ArrayList<>();
        for (NoteName tone : chord.tones()) {
            Pitch pitch = Pitch.atOrAbove(tone, root);
            if (right.stream().noneMatch(pitch::soundsLike)) {
                right.add(pitch);
            }
        }
        return new Voicing(List.of(bass(chord, root)), right);
    }

    /** The highest bass that lies an octave or more below the root. */
    private static Pitch bass(Chord chord, Pitch root) {
        Pitch octaveBelow = root.minus(Interval.OCTAVE);
        Pitch above = Pitch.atOrAbove(chord.bass(), octaveBelow);
        return above.soundsLike(octaveBelow) ? above : above.minus(Interval.OCTAVE);
    }

    /** The octave nearest to the last root; where two are as near, to middle C, then the lower. */
    private static Pitch nearest(NoteName name, Pitch last) {
        Pitch above = Pitch.atOrAbove(name, last);
        return Stream.of(above.minus(Interval.OCTAVE), above)
                .filter(root -> root.midiNumber() >= LOWEST.midiNumber() && root.midiNumber() <= HIGHEST.midiNumber())
                .min((a, b) -> {
                    int byStep = Integer.compare(distance(a, last), distance(b, last));
                    return byStep != 0 ? byStep : Integer.compare(distance(a, HOME), distance(b, HOME));
                })
                .orElseThrow();
    }

    private static int distance(Pitch a, Pitch b) {
        return Math.abs(a.midiNumber() - b.midiNumber());
    }
}
