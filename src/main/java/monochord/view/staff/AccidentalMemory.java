package monochord.view.staff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * Which notes of one staff need an accidental: one holds for its letter in its octave until the bar line, and the key's
 * signs hold in every octave. No courtesy accidentals are written. Common practice; no source.
 */
public final class AccidentalMemory {
    private static final int FIRST_SHARP = -1;
    private static final int FIRST_FLAT = 5;
    /** Two notes of one letter sounded at once: whatever comes next needs a sign. */
    private static final int UNSURE = Integer.MAX_VALUE;

    private final Map<Integer, Integer> bySign = new HashMap<>();
    private final Map<Integer, Integer> inBar = new HashMap<>();

    /** @param signature signs of the key, sharps positive */
    public AccidentalMemory(int signature) {
        for (int i = 0; i < Math.abs(signature); i++) {
            NoteName name = NoteName.at(signature > 0 ? FIRST_SHARP + i : FIRST_FLAT - i);
            bySign.put(name.letterStep(), Integer.signum(signature));
        }
    }

    public void barLine() {
        inBar.clear();
    }

    /** Those of the notes that need one; they sound at once. */
    public List<Pitch> needed(List<Pitch> pitches) {
        return needed(pitches, List.of());
    }

    /**
     * The same where some go on from before.
     *
     * @param tiedInto those, which need none; behind a bar line theirs holds for themselves alone
     */
    public List<Pitch> needed(List<Pitch> all, List<Pitch> tiedInto) {
        List<Pitch> pitches = all.stream()
                .filter(pitch -> !tiedInto.contains(pitch))
                .distinct()
                .sorted()
                .toList();
        List<Pitch> needed = new ArrayList<>();
        Map<Integer, Integer> now = new HashMap<>();
        for (Pitch pitch : pitches) {
            int height = pitch.staffPosition();
            int alteration = pitch.name().alteration();
            boolean twice = pitches.stream().anyMatch(other -> other.staffPosition() == height && !other.equals(pitch));
            if (twice || alteration != held(pitch)) {
                needed.add(pitch);
            }
            now.put(height, twice ? UNSURE : alteration);
        }
        inBar.putAll(now);
        return needed;
    }

    private int held(Pitch pitch) {
        return inBar.getOrDefault(
                pitch.staffPosition(), bySign.getOrDefault(pitch.name().letterStep(), 0));
    }
}
