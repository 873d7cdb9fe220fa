package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.paper.page.Page;
import monochord.paper.page.PageFlow;
import monochord.paper.page.PageSize;
import monochord.paper.page.PageText;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.Picture;

/**
 * A player's part to print: what is played at the top, each section under its name, its lines broken as the song breaks them,
 * and at the foot what was changed and why.
 */
public final class ChartSheet {
    /** Bars in a line where the song does not say. */
    private static final int IN_LINE = 4;

    private static final double SECTION_GAP = 4;
    private static final double LINE_GAP = 2;

    private final PageFlow flow;
    private final PlayerPart part;
    private final ChartLook look;

    /**
     * What stands in the second row.
     *
     * @param numerals whether numerals do
     * @param numbers whether numbers do
     */
    public record ChartLook(boolean numerals, boolean numbers) {}

    private ChartSheet(PageFlow flow, PlayerPart part, ChartLook look) {
        this.flow = flow;
        this.part = part;
        this.look = look;
    }

    /** All pages of one part. */
    public static List<Page> of(PlayerPart part, ChartLook look, PageSize size, Reader reader) {
        PageFlow flow = new PageFlow(size, reader);
        ChartSheet sheet = new ChartSheet(flow, part, look);
        sheet.head();
        part.chart().sections().forEach(sheet::section);
        sheet.changes();
        return flow.pages(Phrase.of("{0}: {1}", part.title(), Phrase.typed(part.name())));
    }

    private void head() {
        flow.keep(PageText.title(), part.title(), 0);
        if (!part.chart().by().isEmpty()) {
            flow.keep(PageText.body(), Phrase.typed(part.chart().by()), 0.5);
        }
        flow.keep(PageText.name(), heading(part), 1.5);
        Phrase played = played(part.chart());
        flow.keep(PageText.body(), played, 0.5);
    }

    /** {@code For alto sax, written in A major}. */
    static Phrase heading(PlayerPart part) {
        return part.isConcert()
                ? Phrase.of("In concert pitch, {0}", part.key())
                : Phrase.of("For {0}, written in {1}", Phrase.typed(part.name()), part.key());
    }

    /** Metre, tempo and style. */
    static Phrase played(Chart chart) {
        List<Phrase> said = new ArrayList<>();
        said.add(
                chart.metre().isFree()
                        ? Phrase.of("in free time")
                        : Phrase.typed(chart.metre().toString()));
        if (chart.tempo() > 0) {
            said.add(
                    chart.metre().isCompound()
                            ? Phrase.of("{0} dotted quarters a minute", chart.tempo())
                            : Phrase.of("{0} quarters a minute", chart.tempo()));
        }
        if (!chart.style().isEmpty()) {
            said.add(Phrase.of("swing {0}", Phrase.typed(chart.style())));
        }
        return Phrase.joined(", ", said);
    }

    private void section(Chart.ChartSection section) {
        if (section.again()) {
            flow.add(PageText.name(), again(section), SECTION_GAP);
            return;
        }
        if (!section.name().isEmpty()) {
            flow.keep(PageText.name(), Phrase.typed(section.name()), SECTION_GAP);
        }
        for (List<ChartBar> line : lines(section.bars())) {
            Picture drawn = new ChartLine(line, part, look, flow).drawn(line.contains(last()));
            flow.add(drawn, LINE_GAP);
        }
    }

    private ChartBar last() {
        List<ChartBar> all = part.chart().bars();
        return all.get(all.size() - 1);
    }

    static Phrase again(Chart.ChartSection section) {
        return Phrase.of("{0} again, as above", Phrase.typed(section.name()));
    }

    /** Where the song has lines of its own they are kept; else four bars stand in each. */
    static List<List<ChartBar>> lines(List<ChartBar> bars) {
        boolean own = bars.stream().anyMatch(bar -> bar.signs().endsLine());
        List<List<ChartBar>> lines = new ArrayList<>();
        List<ChartBar> line = new ArrayList<>();
        for (ChartBar bar : bars) {
            line.add(bar);
            if (own ? bar.signs().endsLine() : line.size() == IN_LINE) {
                lines.add(line);
                line = new ArrayList<>();
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private void changes() {
        if (part.chart().changes().isEmpty()) {
            return;
        }
        flow.keep(PageText.name(), changesTitle(part), SECTION_GAP);
        for (Chart.ChartChange change : part.chart().changes()) {
            flow.add(PageText.body(), told(change), 0.8);
        }
    }

    /** Reasons are written once, for all players, and may name notes. */
    static Phrase changesTitle(PlayerPart part) {
        return part.up().semitones() % 12 == 0
                ? Phrase.of("Changed bars")
                : Phrase.of("Changed bars; notes named here are as they sound");
    }

    /** {@code 1. ♭VI in place of Em; agreed: the tune rests on its fifth}. */
    static Phrase told(Chart.ChartChange change) {
        Phrase state = change.agreed() ? Phrase.of("agreed") : Phrase.of("proposed, to be agreed with the band");
        Phrase what =
                Phrase.of("{0}. {1} in place of {2}; {3}", change.number(), change.degrees(), change.from(), state);
        return change.why().isEmpty() ? what : Phrase.of("{0}: {1}", what, Phrase.typed(change.why()));
    }
}
