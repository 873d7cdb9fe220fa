package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import monochord.song.BarDraft;

/** One measure of a sheet: its bar, what is sung in it, and what its signs say about the form. */
final class SheetBar {
    final BarDraft draft = new BarDraft();

    /** What is sung to each of its notes, held ones included, by verse. */
    final List<Map<String, Syllable>> sung = new ArrayList<>();

    final Set<RepeatMark> marks = EnumSet.noneOf(RepeatMark.class);
    String rehearsal = "";

    /** A sign that says where to go on. The first two stand before a bar, the others behind it. */
    enum RepeatMark {
        SEGNO,
        CODA,
        TO_CODA,
        FINE,
        DA_CAPO,
        DAL_SEGNO
    }

    /**
     * @param goesOn whether the word goes on with the next syllable
     * @param isExtended whether the next notes without a syllable belong to it
     */
    record Syllable(String text, boolean goesOn, boolean isExtended) {}

    boolean has(RepeatMark mark) {
        return marks.contains(mark);
    }
}
