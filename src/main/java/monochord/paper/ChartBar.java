package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;

/**
 * A bar of four beats as a chart has it.
 *
 * @param repeat whether it was written as a repeat of the bar before
 */
record ChartBar(List<ChordEvent> chords, boolean repeat) {
    ChartBar {
        chords = List.copyOf(chords);
    }

    /** All shares of the bar together. */
    int shares() {
        return chords.stream().mapToInt(ChordEvent::shares).sum();
    }

    /** The bars of a progression; where no bar lines are written two chords share a bar, and a last one has it alone. */
    static List<ChartBar> of(Progression progression) {
        List<Bar> bars = progression.bars();
        List<ChartBar> chart = new ArrayList<>();
        for (int i = 0; i < bars.size(); i++) {
            List<ChordEvent> chords = new ArrayList<>(bars.get(i).slots());
            boolean repeat = bars.get(i).repeat();
            if (!progression.barred() && i + 1 < bars.size()) {
                chords.addAll(bars.get(++i).slots());
                repeat = false;
            }
            chart.add(new ChartBar(chords, repeat));
        }
        return chart;
    }
}
