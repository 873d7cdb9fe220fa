package monochord.song.abc;

import java.util.ArrayList;
import java.util.List;
import monochord.song.BarDraft;
import monochord.song.SongMetre;
import monochord.theory.note.Beats;

/**
 * A tune that names no parts, cut where players hear a new part: where a repeat begins or has ended. So each part has its own pick-up, and bars are counted as players count them.
 *
 * <p>Common practice: a tune is spoken of by its A part and its B part.
 */
final class AbcParts {
    private static final int MOST = 26;

    private final List<BarDraft> bars;
    private final SongMetre metre;
    private final boolean isSung;

    /**
     * @param from the first line of music of the part, from 0
     * @param to the line behind its last
     */
    record AbcPart(List<BarDraft> bars, int from, int to) {}

    /** @param isSung whether words stand below its lines, which are kept whole */
    AbcParts(List<BarDraft> bars, SongMetre metre, boolean isSung) {
        this.bars = bars;
        this.metre = metre;
        this.isSung = isSung;
    }

    /** In order, at least one; each begins with the chord that sounds there. */
    List<AbcPart> parts() {
        List<AbcPart> parts = new ArrayList<>();
        int first = 0;
        int firstLine = 0;
        int line = 0;
        for (int i = 1; i < bars.size(); i++) {
            line += bars.get(i - 1).endsLine ? 1 : 0;
            if (begins(i) && parts.size() + 1 < MOST) {
                parts.add(new AbcPart(List.copyOf(bars.subList(first, i)), firstLine, line));
                keepChord(i);
                first = i;
                firstLine = line;
            }
        }
        parts.add(new AbcPart(List.copyOf(bars.subList(first, bars.size())), firstLine, Integer.MAX_VALUE));
        return parts;
    }

    private boolean begins(int index) {
        BarDraft bar = bars.get(index);
        BarDraft before = bars.get(index - 1);
        boolean isNew = bar.opens || before.times > 0 || before.endsPart && isShort(bar);
        boolean goesOn = !bar.ending.isEmpty() || !bar.isEmpty() && bar.sounds.get(0).held;
        return isNew && (before.endsLine || !isSung) && !goesOn;
    }

    private boolean isShort(BarDraft bar) {
        return bar.beats().compareTo(metre.bar()) < 0;
    }

    /** What was still sounding is written down again in the first full bar. */
    private void keepChord(int index) {
        int full = isShort(bars.get(index)) && bars.get(index).symbols.isEmpty() && index + 1 < bars.size()
                ? index + 1
                : index;
        List<BarDraft.Symbol> symbols = bars.get(full).symbols;
        boolean isThere = symbols.stream().anyMatch(symbol -> symbol.start().isZero());
        if (!isThere) {
            bars.subList(0, index).stream()
                    .flatMap(bar -> bar.symbols.stream())
                    .reduce((one, next) -> next)
                    .ifPresent(last -> symbols.add(0, new BarDraft.Symbol(last.chord(), Beats.ZERO)));
        }
    }

    /** How many lines of music end among the bars. */
    int lines() {
        return (int) bars.stream().filter(bar -> bar.endsLine).count();
    }
}
