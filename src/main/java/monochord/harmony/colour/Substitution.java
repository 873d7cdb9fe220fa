package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;

/** Puts chosen chords into the bars of a progression. */
final class Substitution {
    private Substitution() {}

    /** @param chosen one for each chord that is struck; a chord that is held goes on as the one before */
    static Progression of(Progression progression, List<ChordOption> chosen) {
        List<Bar> bars = new ArrayList<>();
        int next = 0;
        for (Bar bar : progression.bars()) {
            List<ChordEvent> slots = new ArrayList<>();
            for (ChordEvent slot : bar.slots()) {
                next += !slot.held() || next == 0 ? 1 : 0;
                ChordOption shade = chosen.get(next - 1);
                slots.add(new ChordEvent(shade.chord, shade.numeral, slot.shares(), slot.held()));
            }
            boolean repeat =
                    bar.repeat() && slots.equals(bars.get(bars.size() - 1).slots());
            bars.add(new Bar(slots, repeat));
        }
        return new Progression(progression.key(), bars, progression.barred());
    }
}
