package monochord.practice.skill.ear;

import java.util.List;
import monochord.practice.Question;
import monochord.practice.teaching.DiatonicTriads;
import monochord.theory.Chord;
import monochord.theory.Key;

/** A longer row to write down: a phrase that stays open, and one that comes home. */
public final class Dictation {
    private Dictation() {}

    /** Eight chords in that key; the same seed asks the same. */
    public static Question question(Key key, long seed) {
        Chance chance = new Chance(seed);
        String open = chance.of(phrases(key, false));
        String home = chance.of(phrases(key, true));
        return new EarProgression().question(key, open + " " + home, seed);
    }

    private static List<String> phrases(Key key, boolean home) {
        Chord tonic = DiatonicTriads.triad(1, key);
        return RowSubject.all(key).stream()
                .filter(row -> home == endsOn(tonic, RowSubject.parse(row, key).chords()))
                .toList();
    }

    private static boolean endsOn(Chord tonic, List<Chord> chords) {
        return chords.get(chords.size() - 1).equals(tonic);
    }
}
