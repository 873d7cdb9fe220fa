package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.ChordEvent;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.web.Html;
import monochord.view.web.WebPage;

/** The parts of several players on one page: in print each begins on a paper of its own. Four bars stand in a line. */
public final class ChartPage {
    private ChartPage() {}

    /** The whole page. */
    public static String of(Phrase title, List<PlayerPart> parts, Reader reader) {
        Html.Element main = Html.element("main").holding(words("h1", title, reader));
        for (PlayerPart part : parts) {
            main = main.holding(part(part, reader));
        }
        return WebPage.page(title, Html.element("body").holding(main), reader);
    }

    private static Html part(PlayerPart part, Reader reader) {
        Phrase heading = Phrase.of("For {0}, written in {1}", Phrase.typed(part.name()), part.key());
        List<Html> bars = ChartBar.of(part.progression()).stream()
                .map(bar -> bar(bar, reader))
                .toList();
        return Html.element("section")
                .with("class", "part")
                .holding(words("h2", heading, reader))
                .holding(words("p", Phrase.of("Four beats a bar; numerals under the chords"), reader))
                .holding(Html.element("div").with("class", "bars").holding(bars));
    }

    private static Html bar(ChartBar bar, Reader reader) {
        List<Html> shares = new ArrayList<>();
        if (bar.repeat()) {
            shares.add(share(Phrase.typed("%"), Phrase.NOTHING, reader));
        } else {
            for (ChordEvent chord : bar.chords()) {
                shares.add(
                        chord.held()
                                ? share(Phrase.typed("·"), Phrase.NOTHING, reader)
                                : share(Phrase.of("{0}", chord.chord()), Phrase.of("{0}", chord.numeral()), reader));
                for (int more = 1; more < chord.shares(); more++) {
                    shares.add(share(Phrase.typed("·"), Phrase.NOTHING, reader));
                }
            }
        }
        return Html.element("div").with("class", "bar").holding(shares);
    }

    private static Html share(Phrase chord, Phrase numeral, Reader reader) {
        return words("div", chord, reader)
                .with("class", "share")
                .holding(words("span", numeral, reader).with("class", "quiet"));
    }

    private static Html.Element words(String element, Phrase phrase, Reader reader) {
        return Html.element(element).holding(phrase.in(reader).plain());
    }
}
