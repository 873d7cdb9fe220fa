package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.BandNumber;
import monochord.view.web.Html;
import monochord.view.web.WebPage;

/** The parts of several players on one page: in print each begins on a paper of its own. */
public final class ChartPage {
    private static final int IN_LINE = 4;

    private final Reader reader;
    private final ChartSheet.ChartLook look;

    private ChartPage(Reader reader, ChartSheet.ChartLook look) {
        this.reader = reader;
        this.look = look;
    }

    /** The whole page. */
    public static String of(Phrase title, List<PlayerPart> parts, ChartSheet.ChartLook look, Reader reader) {
        ChartPage page = new ChartPage(reader, look);
        Html.Element main = Html.element("main").holding(page.words("h1", title));
        for (PlayerPart part : parts) {
            main = main.holding(page.part(part));
        }
        return WebPage.page(title, Html.element("body").holding(main), reader);
    }

    private Html part(PlayerPart part) {
        Chart chart = part.chart();
        List<Html> content = new ArrayList<>();
        content.add(words("h2", ChartSheet.heading(part)));
        if (!chart.by().isEmpty()) {
            content.add(words("p", Phrase.typed(chart.by())));
        }
        content.add(words("p", ChartSheet.played(chart)));
        for (Chart.ChartSection section : chart.sections()) {
            section(section, part, content);
        }
        if (!chart.changes().isEmpty()) {
            content.add(words("h3", ChartSheet.changesTitle(part)));
            chart.changes().forEach(change -> content.add(words("p", ChartSheet.told(change))));
        }
        return Html.element("section").with("class", "part").holding(content);
    }

    private void section(Chart.ChartSection section, PlayerPart part, List<Html> content) {
        if (section.again()) {
            content.add(words("h3", ChartSheet.again(section)));
            return;
        }
        if (!section.name().isEmpty()) {
            content.add(words("h3", Phrase.typed(section.name())));
        }
        for (List<ChartBar> line : ChartSheet.lines(section.bars())) {
            String columns = line.size() > IN_LINE ? "many-bars" : "bars";
            content.add(Html.element("div")
                    .with("class", columns)
                    .holding(line.stream().map(bar -> bar(bar, part)).toList()));
        }
    }

    private Html bar(ChartBar bar, PlayerPart part) {
        List<Html> shares = new ArrayList<>();
        if (bar.signs().same() && bar.change() == 0) {
            shares.add(share(Phrase.typed("%"), Phrase.NOTHING));
        } else {
            bar.chords().forEach(chord -> chord(chord, part, shares));
        }
        Html.Element drawn = Html.element("div").with("class", kinds(bar)).holding(shares);
        Phrase above = above(bar);
        Html.Element told =
                above.isEmpty() ? drawn : drawn.holding(words("div", above).with("class", "above"));
        return part.chart().changes().stream()
                .filter(change -> change.number() == bar.change())
                .findFirst()
                .map(change -> told.holding(
                        words("div", Phrase.of("{0}. {1}, was {2}", change.number(), change.degrees(), change.from()))
                                .with("class", "before")))
                .orElse(told);
    }

    private static String kinds(ChartBar bar) {
        String kinds = "bar";
        kinds += bar.change() > 0 ? " changed" : "";
        kinds += bar.signs().opens() ? " opens" : "";
        return kinds + (bar.signs().times() > 0 ? " repeats" : "");
    }

    /** Its ending, cue and how often it is played. */
    private static Phrase above(ChartBar bar) {
        List<Phrase> said = new ArrayList<>();
        if (!bar.signs().ending().isEmpty()) {
            said.add(Phrase.of("ending {0}", Phrase.typed(bar.signs().ending())));
        }
        if (!bar.cue().isEmpty()) {
            said.add(Phrase.typed(bar.cue()));
        }
        if (bar.signs().times() > 0) {
            said.add(Phrase.of("{0} times", bar.signs().times()));
        }
        return Phrase.joined(", ", said);
    }

    private void chord(ChartBar.ChartChord chord, PlayerPart part, List<Html> shares) {
        Phrase symbol = chord.held()
                ? Phrase.typed("·")
                : chord.chord().map(one -> Phrase.of("{0}", one)).orElse(Phrase.typed("N.C."));
        Phrase hit = chord.hit() ? Phrase.of("{0} (hit)", symbol) : symbol;
        shares.add(share(hit, chord.held() ? Phrase.NOTHING : under(chord, part)));
        for (int more = 1; more < chord.shares(); more++) {
            shares.add(share(Phrase.typed("·"), Phrase.NOTHING));
        }
    }

    private Phrase under(ChartBar.ChartChord chord, PlayerPart part) {
        return look.numbers()
                ? chord.chord()
                        .map(one -> Phrase.of("{0}", BandNumber.of(one, part.key())))
                        .orElse(Phrase.NOTHING)
                : look.numerals()
                        ? chord.numeral().map(one -> Phrase.of("{0}", one)).orElse(Phrase.NOTHING)
                        : Phrase.NOTHING;
    }

    private Html share(Phrase chord, Phrase numeral) {
        return words("div", chord)
                .with("class", "share")
                .holding(words("span", numeral).with("class", "quiet"));
    }

    private Html.Element words(String element, Phrase phrase) {
        return Html.element(element).holding(phrase.in(reader).plain());
    }
}
