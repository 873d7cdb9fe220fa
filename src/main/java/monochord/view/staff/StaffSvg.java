package monochord.view.staff;

import java.util.List;
import java.util.Locale;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.note.Pitch;
import monochord.view.web.Html;

/**
 * Engraved music as SVG, for a file of its own or within a page. Each thing has its meaning for its class, and a title;
 * the whole is told in one sentence to whoever cannot see it.
 */
public final class StaffSvg {
    /** Pixels a staff space has on a screen. */
    private static final int PIXELS = 8;

    private static final String INK = "currentColor";

    private StaffSvg() {}

    /** @param reader whose note names and language it is for */
    public static Html.Element of(StaffMusic music, double width, Reader reader) {
        Engraving engraving = Engraving.of(music, width);
        String words = words(music).in(reader).plain();
        return Html.element("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("class", "staff")
                .with("role", "img")
                .with("aria-label", words)
                .with("viewBox", "0 0 " + number(engraving.width()) + " " + number(engraving.height()))
                .with("width", number(engraving.width() * PIXELS))
                .with("height", number(engraving.height() * PIXELS))
                .with("fill", INK)
                .holding(Html.element("title").holding(words))
                .holding(engraving.drawn().stream()
                        .map(thing -> drawn(thing, reader))
                        .toList());
    }

    /** A file of its own. */
    public static String file(StaffMusic music, Reader reader) {
        return of(music, Engraving.PAGE, reader).write() + "\n";
    }

    /** {@code Dm7 on a staff: D4, F4, A4, C5.} */
    private static Phrase words(StaffMusic music) {
        List<Phrase> columns = music.columns().stream().map(StaffSvg::words).toList();
        return Phrase.sentence("{0} on a staff: {1}.", music.title(), Phrase.joined("; ", columns));
    }

    private static Phrase words(StaffColumn column) {
        Phrase hands = column.lower().isEmpty()
                ? row(column.upper())
                : column.upper().isEmpty()
                        ? row(column.lower())
                        : Phrase.of("{0} below {1}", row(column.lower()), row(column.upper()));
        return column.above().isEmpty() ? hands : Phrase.of("{0} {1}", column.above(), hands);
    }

    private static Phrase row(List<Pitch> pitches) {
        return Phrase.joined(", ", pitches);
    }

    private static Html drawn(Drawn thing, Reader reader) {
        if (thing instanceof Drawn.Sign sign) {
            return Html.element("g")
                    .with("class", sign.meaning())
                    .with("transform", "translate(" + number(sign.x()) + " " + number(sign.y()) + ")")
                    .holding(Html.element("title")
                            .holding(sign.words().in(reader).plain()))
                    .holding(Html.element("path")
                            .with(
                                    "transform",
                                    "scale(" + number(sign.wide() / 1000) + " " + number(sign.tall() / 1000) + ")")
                            .with("d", sign.sign().outline()));
        } else if (thing instanceof Drawn.Line line) {
            return Html.element("rect")
                    .with("class", line.meaning())
                    .with("x", number(line.box().left()))
                    .with("y", number(line.box().top()))
                    .with("width", number(line.box().width()))
                    .with("height", number(line.box().bottom() - line.box().top()));
        }
        Drawn.Words words = (Drawn.Words) thing;
        return Html.element("text")
                .with("class", words.meaning())
                .with("x", number(words.x()))
                .with("y", number(words.y()))
                .with("font-size", number(Drawn.Words.SIZE))
                .with("font-family", "sans-serif")
                .holding(words.text().in(reader).plain());
    }

    /** At most five decimals, none where there is nothing behind them. */
    private static String number(double number) {
        String text = String.format(Locale.ROOT, "%.5f", number).replaceAll("0+$", "");
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }
}
