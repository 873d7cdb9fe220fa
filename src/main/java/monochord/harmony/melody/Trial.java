package monochord.harmony.melody;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.Key;

/** A tune over a progression in which one chord at a time is tried in another's place, by the rules of {@link Fit}. */
public final class Trial {
    private final Key key;
    private final List<Stretch> stretches;
    private final Map<Integer, List<Integer>> over;

    private Trial(Key key, List<Stretch> stretches) {
        this.key = key;
        this.stretches = stretches;
        this.over = IntStream.range(0, stretches.size())
                .filter(i -> stretches.get(i).span() != null)
                .boxed()
                .collect(Collectors.groupingBy(i -> stretches.get(i).span().index()));
    }

    public static Trial of(Melody melody, Progression progression) {
        return new Trial(progression.key(), Stretches.of(melody, progression));
    }

    /**
     * What the notes over that place weigh that clash if {@code chord} stands there and all others stay.
     *
     * @param at which of the chords that are struck, from 0
     */
    public int friction(int at, Chord chord) {
        int sum = 0;
        for (int i : over.getOrDefault(at, List.of())) {
            sum += role(i, at, chord) == NoteRole.CLASH ? stretches.get(i).weight() : 0;
        }
        return sum;
    }

    /** The notes that clash there, each with the nearest that would fit. */
    public List<FitNote> clashes(int at, Chord chord) {
        List<FitNote> clashes = new ArrayList<>();
        for (int i : over.getOrDefault(at, List.of())) {
            if (role(i, at, chord) == NoteRole.CLASH) {
                clashes.add(with(stretches.get(i), at, chord).judged(NoteRole.CLASH, key));
            }
        }
        return clashes;
    }

    private NoteRole role(int i, int at, Chord chord) {
        Stretch before = Fitting.before(stretches, i);
        Stretch after = Fitting.after(stretches, i);
        return Fitting.role(with(stretches.get(i), at, chord), with(before, at, chord), with(after, at, chord));
    }

    private static Stretch with(Stretch stretch, int at, Chord chord) {
        boolean here =
                stretch != null && stretch.span() != null && stretch.span().index() == at;
        return here ? stretch.over(chord) : stretch;
    }
}
