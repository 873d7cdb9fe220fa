package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.melody.ChordSpan;
import monochord.theory.note.Beats;

/** Puts changes into the bars of a progression. */
final class Rewriting {
    /** @param isNew whether a change has put it there or shortened it */
    private record PlacedChord(ChordEvent event, Beats start, Beats end, boolean isNew) {}

    private final PlainRow row;
    private final List<PlacedChord> pieces = new ArrayList<>();

    private Rewriting(PlainRow row) {
        this.row = row;
    }

    /** @param changes in order of place, none over another */
    static Progression of(PlainRow row, List<Change> changes) {
        return changes.isEmpty() ? row.progression : new Rewriting(row).with(changes);
    }

    private Progression with(List<Change> changes) {
        int next = 0;
        for (Change change : changes) {
            keep(next, change.changedFrom());
            List<ChordSpan> spans = change.spans();
            List<ChordEvent> events = new ArrayList<>();
            change.places().forEach(events::addAll);
            for (int i = 0; i < spans.size(); i++) {
                pieces.add(new PlacedChord(
                        events.get(i), spans.get(i).start(), spans.get(i).end(), true));
            }
            next = change.changedTo() + 1;
        }
        keep(next, row.size());
        return new Progression(row.key, bars(), row.progression.barred());
    }

    private void keep(int from, int to) {
        for (int at = from; at < to; at++) {
            pieces.add(new PlacedChord(
                    row.event(at), row.span(at).start(), row.span(at).end(), false));
        }
    }

    private List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        List<Bar> old = row.progression.bars();
        int from = 0;
        for (int number = 0; number < old.size(); number++) {
            Beats start = Beats.of(number);
            Beats end = Beats.of(number + 1L);
            while (pieces.get(from).end().compareTo(start) <= 0) {
                from++;
            }
            List<PlacedChord> here = new ArrayList<>();
            for (int i = from; i < pieces.size() && pieces.get(i).start().compareTo(end) < 0; i++) {
                here.add(pieces.get(i));
            }
            boolean isChanged = here.stream().anyMatch(PlacedChord::isNew);
            List<ChordEvent> slots =
                    isChanged ? slots(here, start, end) : old.get(number).slots();
            boolean repeat = old.get(number).repeat()
                    && slots.equals(bars.get(number - 1).slots());
            bars.add(new Bar(slots, repeat));
        }
        return bars;
    }

    /** The least shares that hold every change of chord within the bar. */
    private static List<ChordEvent> slots(List<PlacedChord> pieces, Beats start, Beats end) {
        List<Beats> lengths = new ArrayList<>();
        long shares = 1;
        for (PlacedChord piece : pieces) {
            Beats from = later(piece.start(), start);
            Beats to = piece.end().compareTo(end) < 0 ? piece.end() : end;
            lengths.add(to.minus(from));
            shares = Beats.commonParts(shares, to.minus(from).denominator());
        }
        List<ChordEvent> slots = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Beats length = lengths.get(i).times(shares);
            ChordEvent event = pieces.get(i).event();
            boolean held = pieces.get(i).start().compareTo(start) < 0;
            slots.add(new ChordEvent(event.chord(), event.numeral(), (int) length.numerator(), held));
        }
        return slots;
    }

    private static Beats later(Beats one, Beats other) {
        return one.compareTo(other) < 0 ? other : one;
    }
}
