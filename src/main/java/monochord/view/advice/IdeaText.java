package monochord.view.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.colour.Idea;
import monochord.harmony.melody.FitNote;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;
import monochord.view.music.Pictures;

/** One change to a progression: the row before and after, two keyboards, and the same in a line. */
public record IdeaText(Idea idea) {
    /** How to hear it. */
    static final Phrase WHAT_NEXT = Phrase.sentence(
            "{0} lets you hear it, {1} sets it beside what you have.",
            Phrase.verb("play"), Phrase.verb("compare this"));

    private static final int MOST_COLUMNS = 8;
    private static final int BESIDE = 2;
    private static final int LABEL = 8;

    /** What stood in one place, and what stands in its time now; both as numerals below. */
    private record PlaceOfRow(ChordEvent before, ChordEvent after, boolean isChanged, boolean beginsBar) {}

    /** The two rows with their numerals; of a long row the bars around the change. */
    StyledText rows(Look look) {
        List<PlaceOfRow> places = shown();
        if (look.plain()) {
            return inWords(look);
        }
        Table table = Table.of(columns(places.size()));
        if (places.size() < places().size()) {
            table.across(Phrase.of("Here: {0}", idea.where()).styled(Style.QUIET));
        }
        table.row(line(Phrase.of("before"), places, place -> symbol(place.before(), place)));
        table.row(line(Phrase.NOTHING, places, place -> numeral(place.before(), place)));
        table.row(line(Phrase.of("after"), places, place -> symbol(place.after(), place)));
        table.row(line(Phrase.NOTHING, places, place -> numeral(place.after(), place)));
        return table.text(look);
    }

    private static Column[] columns(int places) {
        return Stream.concat(
                        Stream.of(Column.left().atLeast(LABEL)),
                        Stream.generate(Column::left).limit(places))
                .toArray(Column[]::new);
    }

    private StyledText inWords(Look look) {
        Progression now = idea.progression();
        return StyledText.builder(look.reader())
                .line(Phrase.of("Before: {0}", Phrase.row(before().symbols())))
                .line(Phrase.of("After: {0}", Phrase.row(now.symbols())))
                .line(Phrase.of("By numerals: {0}", Phrase.row(now.numerals())))
                .build()
                .wrapped(look.width());
    }

    private Progression before() {
        return idea.plain();
    }

    private static List<Phrase> line(
            Phrase label, List<PlaceOfRow> places, java.util.function.Function<PlaceOfRow, Phrase> cell) {
        List<Phrase> cells = new ArrayList<>(List.of(label.styled(Style.QUIET)));
        places.forEach(place -> cells.add(cell.apply(place)));
        return cells;
    }

    /** Where bars are written, the first chord of a bar stands behind its line. */
    private static Phrase symbol(ChordEvent event, PlaceOfRow place) {
        if (event == null) {
            return Phrase.NOTHING;
        }
        Phrase chord = Phrase.of("{0}", event.chord()).styled(place.isChanged() ? Style.STRONG : Style.PLAIN);
        return place.beginsBar() ? Phrase.of("| {0}", chord) : chord;
    }

    private static Phrase numeral(ChordEvent event, PlaceOfRow place) {
        if (event == null) {
            return Phrase.NOTHING;
        }
        Phrase numeral = Phrase.of("{0}", event.numeral()).styled(Style.QUIET);
        return place.beginsBar() ? Phrase.of("  {0}", numeral) : numeral;
    }

    private List<PlaceOfRow> shown() {
        List<PlaceOfRow> places = places();
        if (places.size() <= MOST_COLUMNS) {
            return places;
        }
        int from = 0;
        int to = places.size();
        while (from < to && !places.get(from).isChanged()) {
            from++;
        }
        while (to > from && !places.get(to - 1).isChanged()) {
            to--;
        }
        return places.subList(Math.max(0, from - BESIDE), Math.min(places.size(), to + BESIDE));
    }

    private List<PlaceOfRow> places() {
        List<PlaceOfRow> places = new ArrayList<>();
        List<ChordEvent> plain = struck(before());
        List<Integer> beginning = before().barred() ? beginning(before()) : List.of();
        int changedFrom = idea.isInsertion() ? idea.first() - 1 : idea.first();
        int changedTo = idea.isInsertion() ? changedFrom : idea.last();
        for (int at = 0; at < plain.size(); at++) {
            if (at < changedFrom || at > changedTo) {
                places.add(new PlaceOfRow(plain.get(at), plain.get(at), false, beginning.contains(at)));
            } else {
                ChordEvent old = plain.get(at);
                for (ChordEvent now : idea.inTimeOf(at)) {
                    places.add(new PlaceOfRow(old, now, true, old != null && beginning.contains(at)));
                    old = null;
                }
            }
        }
        return places;
    }

    /** The chords that begin a bar, by their number from 0. */
    private static List<Integer> beginning(Progression progression) {
        List<Integer> beginning = new ArrayList<>();
        int chords = 0;
        for (Bar bar : progression.bars()) {
            if (!bar.slots().get(0).held()) {
                beginning.add(chords);
            }
            chords += (int) bar.slots().stream().filter(slot -> !slot.held()).count();
        }
        return beginning;
    }

    private static List<ChordEvent> struck(Progression progression) {
        List<ChordEvent> struck = new ArrayList<>();
        for (ChordEvent slot : progression.slots()) {
            if (!slot.held() || struck.isEmpty()) {
                struck.add(slot);
            }
        }
        return struck;
    }

    /** The keys of what stood there, and of what stands there now. */
    StyledText keyboards(Look look) {
        List<ChordEvent> old = new ArrayList<>(idea.from());
        if (idea.isInsertion()) {
            List<ChordEvent> plain = struck(before());
            old.add(plain.get(idea.first() - 1));
            old.add(plain.get(idea.first() % plain.size()));
        }
        List<ChordEvent> now = new ArrayList<>(idea.to());
        if (idea.isInsertion()) {
            now.add(0, old.get(0));
            now.add(old.get(1));
        }
        return Pictures.progression(row(old), look).plus(Pictures.progression(row(now), look));
    }

    private Progression row(List<ChordEvent> events) {
        List<Bar> bars = events.stream()
                .map(event -> new Bar(List.of(new ChordEvent(event.chord(), event.numeral(), 1, false)), false))
                .toList();
        return new Progression(before().key(), bars, false);
    }

    /** {@code Fm between F and C, after chord 4: borrowed iv}. */
    static Phrase inOneLine(Idea idea) {
        Phrase what = idea.isInsertion()
                ? Phrase.of("{0} between {1} and {2}", chords(idea.to()), idea.before(), idea.after())
                : Phrase.of("{0} for {1}", chords(idea.to()), chords(idea.from()));
        return Phrase.of("{0}, {1}: {2}", what.styled(Style.STRONG), idea.where(), idea.nameInWords());
    }

    static Phrase chords(List<ChordEvent> events) {
        return Phrase.row(events.stream().map(ChordEvent::chord).toList());
    }

    static List<String> numerals(Progression progression) {
        return struck(progression).stream()
                .map(event -> event.numeral().toString())
                .toList();
    }

    /** What the tune would have to sing otherwise. */
    static Optional<Phrase> tune(Idea idea) {
        List<Phrase> changes =
                idea.clashes().stream().map(IdeaText::change).distinct().toList();
        return changes.isEmpty()
                ? Optional.empty()
                : Optional.of(Phrase.sentence("In the tune: {0}.", Phrase.joined(", ", changes)));
    }

    private static Phrase change(FitNote clash) {
        return clash.change()
                .map(change -> Phrase.of("{0} becomes {1}", clash.pitch(), change.to()))
                .orElseGet(() -> Phrase.of("{0} has nothing near that fits", clash.pitch()));
    }
}
