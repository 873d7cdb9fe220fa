package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import monochord.song.BarDraft;
import monochord.song.Section;
import monochord.song.SongMetre;
import monochord.text.Phrase;

/** Makes sections of the bars of a sheet, by its rehearsal marks and its jumps, in the order in which they are played. */
final class SheetForm {
    private static final String ONLY = "Tune";
    private static final int MOST_SECTIONS = 500;

    private final List<SheetBar> bars;
    private final SongMetre metre;
    private final Set<Phrase> remarks;
    private final List<Integer> starts = new ArrayList<>();

    SheetForm(List<SheetBar> bars, SongMetre metre, Set<Phrase> remarks) {
        this.bars = bars;
        this.metre = metre;
        this.remarks = remarks;
    }

    List<Section> sections() {
        TreeSet<Integer> cuts = new TreeSet<>(Set.of(0));
        boolean jumps = false;
        for (int i = 0; i < bars.size(); i++) {
            SheetBar bar = bars.get(i);
            boolean before =
                    !bar.rehearsal.isEmpty() || bar.has(SheetBar.RepeatMark.SEGNO) || bar.has(SheetBar.RepeatMark.CODA);
            boolean behind = bar.marks.stream().anyMatch(mark -> mark.compareTo(SheetBar.RepeatMark.CODA) > 0);
            jumps |= bar.has(SheetBar.RepeatMark.DA_CAPO) || bar.has(SheetBar.RepeatMark.DAL_SEGNO);
            if (before) {
                cuts.add(i);
            }
            if (behind && i + 1 < bars.size()) {
                cuts.add(i + 1);
            }
        }
        boolean isCuttable = cuts.stream().noneMatch(this::isInRepeat);
        if (jumps && !isCuttable) {
            remarks.add(Phrase.sentence("Its jumps (D.C., D.S.) lead into a repeat and are not played."));
        }
        cuts.removeIf(this::isInRepeat);
        starts.addAll(cuts);
        return written(jumps && isCuttable ? order() : inTurn());
    }

    private boolean isInRepeat(int cut) {
        int depth = 0;
        for (int i = 0; i < cut; i++) {
            BarDraft bar = bars.get(i).draft;
            depth = bar.times > 0 ? 0 : bar.opens ? 1 : depth;
        }
        boolean endingFollows =
                cut > 0 && cut < bars.size() && !bars.get(cut).draft.ending.isEmpty();
        return depth > 0 || endingFollows || cut > 0 && depth == 0 && closesUnopened(cut);
    }

    /** Whether a repeat that was opened nowhere ends behind this place and would be cut short by it. */
    private boolean closesUnopened(int cut) {
        for (int i = cut; i < bars.size(); i++) {
            BarDraft bar = bars.get(i).draft;
            if (bar.opens || i > cut && starts.contains(i)) {
                return false;
            } else if (bar.times > 0) {
                return !bars.get(cut - 1).draft.endsPart && bars.get(cut - 1).draft.times == 0;
            }
        }
        return false;
    }

    private List<Integer> inTurn() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            order.add(i);
        }
        return order;
    }

    /** Once through, from a jump again, to the end or the coda. */
    private List<Integer> order() {
        List<Integer> order = new ArrayList<>();
        boolean jumped = false;
        int next = 0;
        while (next < starts.size() && order.size() < MOST_SECTIONS) {
            order.add(next);
            SheetBar last = bars.get(end(next) - 1);
            boolean jumps = last.has(SheetBar.RepeatMark.DA_CAPO) || last.has(SheetBar.RepeatMark.DAL_SEGNO);
            if (jumped && last.has(SheetBar.RepeatMark.FINE)) {
                return order;
            } else if (!jumped && jumps) {
                jumped = true;
                next = last.has(SheetBar.RepeatMark.DAL_SEGNO) ? starting(SheetBar.RepeatMark.SEGNO, 0) : 0;
            } else if (jumped && last.has(SheetBar.RepeatMark.TO_CODA)) {
                next = starting(SheetBar.RepeatMark.CODA, next + 1);
            } else {
                next++;
            }
        }
        return order;
    }

    private int starting(SheetBar.RepeatMark mark, int otherwise) {
        for (int i = 0; i < starts.size(); i++) {
            if (bars.get(starts.get(i)).has(mark)) {
                return i;
            }
        }
        return otherwise;
    }

    private int end(int section) {
        return section + 1 < starts.size() ? starts.get(section + 1) : bars.size();
    }

    private List<Section> written(List<Integer> order) {
        List<String> names = names();
        List<Section> sections = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (int index : order) {
            List<SheetBar> its = bars.subList(starts.get(index), end(index));
            sections.add(new Section(names.get(index), sections.size() + 1, seen.add(index) ? blocks(its) : List.of()));
        }
        return sections;
    }

    /** A mark that comes again with other bars gets a number. */
    private List<String> names() {
        List<String> names = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        String name = ONLY;
        for (int start : starts) {
            String said = bars.get(start).rehearsal;
            name = said.isEmpty() ? name : said;
            int count = counts.merge(name, 1, Integer::sum);
            names.add(count == 1 ? name : name + " " + count);
        }
        return names;
    }

    private List<Section.Part> blocks(List<SheetBar> its) {
        List<BarDraft> drafts = its.stream().map(bar -> bar.draft).toList();
        List<Section.Part> blocks = new ArrayList<>();
        if (drafts.stream().anyMatch(bar -> !bar.symbols.isEmpty())) {
            blocks.add(new Section.ChordBlock(BarDraft.chords(drafts, metre)));
        }
        if (drafts.stream().anyMatch(BarDraft::hasNotes)) {
            blocks.add(new Section.TuneBlock(drafts.stream().map(BarDraft::tune).toList()));
        }
        List<String> words = SheetWords.of(its);
        if (!words.isEmpty()) {
            blocks.add(new Section.WordsBlock(words));
        }
        if (blocks.isEmpty()) {
            blocks.add(new Section.ChordBlock(
                    drafts.stream().map(bar -> bar.chords(true)).toList()));
        }
        return blocks;
    }
}
