package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.Progression;
import monochord.harmony.Slot;

/** Puts chosen chords into the bars of a progression. */
final class Painting {
    private Painting() {}

    /** @param chosen one for each chord that is struck; a chord that is held goes on as the one before */
    static Progression of(Progression progression, List<Shade> chosen) {
        List<Bar> bars = new ArrayList<>();
        int next = 0;
        for (Bar bar : progression.bars()) {
            List<Slot> slots = new ArrayList<>();
            for (Slot slot : bar.slots()) {
                next += !slot.held() || next == 0 ? 1 : 0;
                Shade shade = chosen.get(next - 1);
                slots.add(new Slot(shade.chord, shade.numeral, slot.shares(), slot.held()));
            }
            boolean repeat =
                    bar.repeat() && slots.equals(bars.get(bars.size() - 1).slots());
            bars.add(new Bar(slots, repeat));
        }
        return new Progression(progression.key(), bars, progression.barred());
    }
}
