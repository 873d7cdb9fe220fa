package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;

/**
 * A line that one voice can sing by half steps through the chords of a change and those beside it.
 *
 * @param notes three or more, one of them from outside the key
 */
record HalfStepLine(List<NoteName> notes, boolean isRising) {
    private static final int SHORTEST = 3;
    private static final int OCTAVE = 12;

    /** The longest one; of equal ones that which falls. */
    static Optional<HalfStepLine> of(Change change) {
        List<Chord> chords = new ArrayList<>();
        if (change.before() != null) {
            chords.add(change.before());
        }
        change.chords().forEach(event -> chords.add(event.chord()));
        if (change.after() != null) {
            chords.add(change.after());
        }
        List<NoteName> falling = longest(chords, change, -1);
        List<NoteName> rising = longest(chords, change, 1);
        List<NoteName> best = rising.size() > falling.size() ? rising : falling;
        return best.size() < SHORTEST ? Optional.empty() : Optional.of(new HalfStepLine(best, best == rising));
    }

    private static List<NoteName> longest(List<Chord> chords, Change change, int step) {
        List<NoteName> longest = List.of();
        for (int from = 0; from < chords.size(); from++) {
            for (NoteName start : chords.get(from).tones()) {
                List<NoteName> line = from(chords, from, start, step);
                boolean isNew = line.stream().anyMatch(tone -> !change.key().holds(tone));
                longest = isNew && line.size() > longest.size() ? line : longest;
            }
        }
        return longest;
    }

    private static List<NoteName> from(List<Chord> chords, int from, NoteName start, int step) {
        List<NoteName> line = new ArrayList<>(List.of(start));
        for (int at = from + 1; at < chords.size(); at++) {
            int wanted = Math.floorMod(line.get(line.size() - 1).pitchClass() + step, OCTAVE);
            Optional<NoteName> next = chords.get(at).tones().stream()
                    .filter(tone -> tone.pitchClass() == wanted)
                    .findFirst();
            if (next.isEmpty()) {
                return line;
            }
            line.add(next.get());
        }
        return line;
    }
}
