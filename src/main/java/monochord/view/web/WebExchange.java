package monochord.view.web;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.view.keyboard.KeyboardRange;

/** An exchange at the prompt as part of a page. */
final class WebExchange {
    private static final Pattern COLUMNS = Pattern.compile("\\S {2,}\\S|[─━═│●┴█]");

    private WebExchange() {}

    static Html.Element of(PageSection.AnsweredLine exchange, int number) {
        Html.Element cell = Html.element("section")
                .with("class", "cell")
                .with("aria-label", said(Phrase.of("At the prompt, {0}", number), exchange))
                .holding(typed(exchange.typed()));
        if (!exchange.answer().isEmpty()) {
            cell = cell.holding(answer(exchange, number));
        }
        if (!exchange.drawings().isEmpty()) {
            cell = cell.holding(drawings(exchange));
        }
        return exchange.sound().isPresent()
                ? cell.holding(sound(exchange.sound().get(), exchange))
                : cell;
    }

    private static String said(Phrase phrase, PageSection.AnsweredLine exchange) {
        return phrase.in(exchange.reader()).plain();
    }

    /** Of an empty line, the key that was pressed. */
    private static Html.Element typed(List<String> lines) {
        String text = String.join("\n", lines);
        Html.Element typed = text.isBlank()
                ? Html.element("kbd").holding("Enter")
                : Html.element("code").holding(text);
        return Html.element("pre").with("class", "typed").holding(typed);
    }

    /** It can be scrolled where it is wide, so the keyboard must be able to reach it, and a reader has to call it something. */
    private static Html.Element answer(PageSection.AnsweredLine exchange, int number) {
        return Html.element("div")
                .with("class", "answer")
                .with("role", "group")
                .with("aria-label", said(Phrase.of("Answer {0}", number), exchange))
                .with("tabindex", "0")
                .holding(
                        exchange.answer().lines().stream().map(WebExchange::row).toList());
    }

    /** A line of columns stays as it was set; a sentence breaks where the window does. */
    private static Html.Element row(StyledLine line) {
        boolean set = COLUMNS.matcher(line.plain()).find();
        List<Html> spans = line.spans().stream()
                .map(span -> span(span.text(), span.style()))
                .toList();
        return Html.element("div").with("class", set ? "row set" : "row").holding(spans);
    }

    private static Html span(String text, Style style) {
        return style == Style.PLAIN
                ? Html.text(text)
                : Html.element("span")
                        .with("class", style.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .holding(text);
    }

    /** All between the same keys, so that hands can be compared. */
    private static Html.Element drawings(PageSection.AnsweredLine exchange) {
        KeyboardRange range = KeyboardRange.around(exchange.drawings());
        return Html.element("div")
                .with("class", "drawings")
                .holding(exchange.drawings().stream()
                        .map(drawing -> KeyboardDrawn.of(drawing, range, exchange.reader()))
                        .toList());
    }

    private static Html.Element sound(EmbeddedSound sound, PageSection.AnsweredLine exchange) {
        Phrase listen = Phrase.of("Listen: {0}", sound.name());
        Html.Element player = Html.element("audio")
                .with("controls", "")
                .with("preload", "metadata")
                .with("aria-label", said(listen, exchange))
                .with("src", sound.address());
        Html.Element caption =
                Html.element("figcaption").holding(said(Phrase.of("{0}, {1} s", listen, sound.seconds()), exchange));
        return Html.element("figure").with("class", "sound").holding(player, caption);
    }
}
