package monochord.harmony.tune;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
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

    private static boolean isOn(Chord chord, Chord book) {
        return chord.root().equals(book.root());
    }

    /** Slots of all tunes from the first full bar on, and in how many of them a test holds. */
    private static double share(BiPredicate<HarmonisedSlot, Chord> holds) {
        int slots = 0;
        int held = 0;
        for (String[] row : TUNES) {
            Harmonisation found = harmonise(row);
            Progression book = Progression.parse(row[5].strip(), found.key());
            for (HarmonisedSlot slot : found.slots()) {
                if (slot.start() >= 0) {
                    slots++;
                    held += holds.test(slot, customary(book, found.metre(), slot.start())) ? 1 : 0;
                }
            }
        }
        return (double) held / slots;
    }

    @Test
    void meetsTheCustomaryRootInMostSlots() {
        assertTrue(TUNES.size() >= 12, () -> TUNES.size() + " tunes");
        double met = share((slot, book) -> isOn(slot.offer().chord(), book));
        assertTrue(met >= 0.75, () -> "met in " + met);
    }

    @Test
    void hasTheCustomaryRootAmongThreeOffersInNearlyAllSlots() {
        double met = share((slot, book) -> isOn(slot.offer().chord(), book)
                || slot.others().stream().anyMatch(other -> isOn(other.chord(), book)));
        assertTrue(met >= 0.92, () -> "met in " + met);
    }

    @Test
    void offersThreeDifferentRootsInEachSlot() {
        for (String[] row : TUNES) {
            for (HarmonisedSlot slot : harmonise(row).slots()) {
                long roots = Stream.concat(Stream.of(slot.offer()), slot.others().stream())
                        .map(offer -> offer.chord().root())
                        .distinct()
                        .count();
                assertEquals(3, roots, () -> row[0] + " at " + slot.start());
                assertTrue(slot.others().stream().noneMatch(offer -> offer.why().isEmpty()));
            }
        }
    }

    @Test
    void endsAtHomeWhereTheTuneDoes() {
        for (String[] row : TUNES) {
            List<HarmonisedSlot> slots = harmonise(row).slots();
            assertEquals(
                    Key.parse(row[1]).tonic(),
                    slots.get(slots.size() - 1).offer().chord().root(),
                    row[0]);
        }
    }
}
