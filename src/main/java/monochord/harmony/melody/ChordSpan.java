package monochord.harmony.melody;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.note.Beats;

/**
 * A chord as long as it sounds.
 *
 * @param index which of the chords that are struck, from 0
 * @param start beats from the start of the progression
 */
public record ChordSpan(int index, Chord chord, Beats start, Beats beats) {
    public Beats end() {
        return start.plus(beats);
    }

    /** The chords of a progression one after another, each bar as long as {@code bar}. */
    public static List<ChordSpan> of(Progression progression, Beats bar) {
        List<ChordSpan> spans = new ArrayList<>();
        Beats barStart = Beats.ZERO;
        for (Bar one : progression.bars()) {
            Beats share = bar.dividedInto(one.shares());
            int before = 0;
            for (ChordEvent slot : one.slots()) {
                add(spans, slot, barStart.plus(share.times(before)), share.times(slot.shares()));
                before += slot.shares();
            }
            barStart = barStart.plus(bar);
        }
        return List.copyOf(spans);
    }

    private static void add(List<ChordSpan> spans, ChordEvent slot, Beats start, Beats beats) {
        boolean goesOn = slot.held() && !spans.isEmpty();
        if (goesOn) {
            ChordSpan last = spans.remove(spans.size() - 1);
            spans.add(new ChordSpan(last.index, last.chord, last.start, last.beats.plus(beats)));
        } else {
            spans.add(new ChordSpan(spans.size(), slot.chord(), start, beats));
        }
    }
}
