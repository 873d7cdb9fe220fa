package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** A chord layout out as it is heard, on a root of the key. */
record ChordLayout(Chord chord, Pitch bass) {
    private static final Pitch LOWEST_CLOSE = Pitch.parse("E3");
    private static final Pitch LOWEST_SPREAD = Pitch.parse("C3");
    private static final Pitch HIGHEST = Pitch.parse("A5");
    /** Where a chord that the key does not hold stands. */
    private static final List<Integer> FIRM = List.of(1, 4, 5);

    /** On a degree where the key has such a chord, else on one of its firm ones; as high as it may lie. */
    static ChordLayout of(QualitySubject about, Key key, Chance chance) {
        Chord root = new Chord(chance.of(roots(about, key)), about.kind());
        Chord chord = root.over(root.tones().get(about.inversion()));
        Pitch lowest = Pitch.atOrAbove(chord.bass(), about.spread() ? LOWEST_SPREAD : LOWEST_CLOSE);
        Pitch bass = chance.of(Stream.iterate(
                        lowest,
                        pitch -> pitch.equals(lowest)
                                || top(pitches(chord, pitch, about.spread())) <= HIGHEST.midiNumber(),
                        pitch -> pitch.plus(Interval.OCTAVE))
                .toList());
        return new ChordLayout(chord, bass);
    }

    private static int top(List<Pitch> pitches) {
        return pitches.get(pitches.size() - 1).midiNumber();
    }

    private static List<NoteName> roots(QualitySubject about, Key key) {
        List<NoteName> own = IntStream.rangeClosed(1, 7)
                .mapToObj(key::note)
                .filter(root -> new Chord(root, about.kind()).tones().stream().allMatch(key::holds))
                .toList();
        return own.isEmpty() ? FIRM.stream().map(key::note).toList() : own;
    }

    /** Bottom to top: close, or with the second note from below an octave higher. */
    List<Pitch> pitches(boolean spread) {
        return pitches(chord, bass, spread);
    }

    private static List<Pitch> pitches(Chord chord, Pitch bass, boolean spread) {
        List<Pitch> pitches = new ArrayList<>();
        for (NoteName tone : chord.fromBass()) {
            pitches.add(pitches.isEmpty() ? bass : Pitch.atOrAbove(tone, pitches.get(pitches.size() - 1)));
        }
        if (spread && pitches.size() > 2) {
            pitches.set(1, pitches.get(1).plus(Interval.OCTAVE));
        }
        return pitches.stream().sorted().toList();
    }

    /** Another kind on the same root, with the same place of the stack in the bass, as near as it can be. */
    ChordLayout with(QualitySubject other) {
        Chord root = new Chord(chord.root(), other.kind());
        NoteName lowest = root.tones().get(other.inversion());
        Pitch near = Pitch.atOrAbove(lowest, bass.minus(Interval.AUGMENTED_FOURTH));
        return new ChordLayout(root.over(lowest), near);
    }
}
