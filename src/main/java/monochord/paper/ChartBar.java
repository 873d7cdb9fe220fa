package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;

/**
 * A bar as a chart has it.
 *
 * @param signs what stands around it
 * @param cue words over it, perhaps nothing
 * @param change the number of the change that was made in it, or 0
 */
public record ChartBar(List<ChartChord> chords, BarSigns signs, String cue, int change) {
    /**
     * A chord in its bar, or none.
     *
     * @param held whether it goes on from the bar before
     * @param hit whether it is struck short and together
     */
    public record ChartChord(Optional<Chord> chord, Optional<Numeral> numeral, int shares, boolean held, boolean hit) {
        ChartChord plus(Interval interval) {
            return new ChartChord(chord.map(one -> one.plus(interval)), numeral, shares, held, hit);
        }
    }

    /**
     * What stands around a bar.
     *
     * @param same whether it is written as a repeat of the bar before
     * @param opens whether a repeat begins with it
     * @param times how often what is repeated is played when a repeat ends with it, else 0
     * @param ending the numbers of the ending that begins with it, or nothing
     * @param endsPart whether a double line comes behind it
     * @param endsLine whether the next bar begins a line
     */
    public record BarSigns(boolean same, boolean opens, int times, String ending, boolean endsPart, boolean endsLine) {
        static final BarSigns NONE = new BarSigns(false, false, 0, "", false, false);
    }

    public ChartBar {
        chords = List.copyOf(chords);
    }

    ChartBar plus(Interval interval) {
        return new ChartBar(chords.stream().map(chord -> chord.plus(interval)).toList(), signs, cue, change);
    }

    /** All shares of the bar together; 1 where it is empty. */
    int shares() {
        return Math.max(1, chords.stream().mapToInt(ChartChord::shares).sum());
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
            BarSigns signs = repeat ? new BarSigns(true, false, 0, "", false, false) : BarSigns.NONE;
            chart.add(new ChartBar(chords.stream().map(ChartBar::chord).toList(), signs, "", 0));
        }
        return chart;
    }

    private static ChartChord chord(ChordEvent event) {
        return new ChartChord(
                Optional.of(event.chord()), Optional.of(event.numeral()), event.shares(), event.held(), false);
    }
}
