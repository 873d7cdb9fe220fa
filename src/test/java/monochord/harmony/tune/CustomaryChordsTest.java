package monochord.harmony.tune;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.key.Counted;
import monochord.harmony.melody.Melody;
import monochord.harmony.tune.Harmonisation.HarmonisedSlot;
import monochord.theory.Chord;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/** Tunes long in the public domain and the chords they customarily get. Source: the first line of the table. */
class CustomaryChordsTest {
    private static final List<String[]> TUNES = Counted.rows("/monochord/harmony/tune/tunes-with-chords.csv");

    /** The chord that the book has at a time, in beats from the first full bar. */
    private static Chord customary(Progression book, HarmonicMetre metre, double beat) {
        double bar = HarmonicMetre.number(metre.bar());
        Bar here =
                book.bars().get(Math.min((int) (beat / bar + 1e-9), book.bars().size() - 1));
        double within = (beat / bar - Math.floor(beat / bar + 1e-9)) * here.shares();
        double passed = 0;
        for (ChordEvent event : here.slots()) {
            passed += event.shares();
            if (within < passed - 1e-9) {
                return event.chord();
            }
        }
        return here.slots().get(here.slots().size() - 1).chord();
    }

    private static Harmonisation harmonise(String[] row) {
        return Harmonisation.of(
                Melody.parse(row[4].strip()), Key.parse(row[1]), HarmonicMetre.parse(row[2]), Counted.KEYS.chords());
    }

    @Test
    void meetsTheCustomaryRootInTwoSlotsOfThree() {
        double slots = 0;
        double same = 0;
        double amongThree = 0;
        List<String> said = new ArrayList<>();
        for (String[] row : TUNES) {
            Harmonisation found = harmonise(row);
            Progression book = Progression.parse(row[5].strip(), found.key());
            int here = 0;
            int all = 0;
            for (HarmonisedSlot slot : found.slots()) {
                if (slot.start() >= 0) {
                    Chord chord = customary(book, found.metre(), slot.start());
                    boolean first = slot.offer().chord().root().equals(chord.root());
                    all++;
                    here += first ? 1 : 0;
                    slots++;
                    same += first ? 1 : 0;
                    amongThree += first
                                    || slot.others().stream()
                                            .anyMatch(other ->
                                                    other.chord().root().equals(chord.root()))
                            ? 1
                            : 0;
                }
            }
            said.add(row[0] + " " + here + "/" + all + " " + found.progression() + "\n    " + book);
        }
        System.out.println(String.join("\n", said) + "\n" + same / slots + " " + amongThree / slots);
        assertTrue(TUNES.size() >= 12);
        assertTrue(same / slots >= 0.66);
        assertTrue(amongThree / slots >= 0.88);
    }
}
