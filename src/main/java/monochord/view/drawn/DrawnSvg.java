package monochord.view.drawn;

import monochord.text.Reader;
import monochord.view.web.Html;

/** Drawn things as SVG. Each has its meaning for its class; what is no plain line has a title, too. */
public final class DrawnSvg {
    private static final String INK = "currentColor";
    private static final long PARTS = 100_000;

    private DrawnSvg() {}

    /**
     * A picture that is told in one sentence to whoever cannot see it.
     *
     * @param kind its class
     * @param pixels how many a unit of length has on a screen
     */
    public static Html.Element of(String kind, String words, Picture picture, double pixels, Reader reader) {
        return Html.element("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("class", kind)
                .with("role", "img")
                .with("aria-label", words)
                .with("viewBox", "0 0 " + number(picture.width()) + " " + number(picture.height()))
                .with("width", number(picture.width() * pixels))
                .with("height", number(picture.height() * pixels))
                .with("fill", INK)
                .holding(Html.element("title").holding(words))
                .holding(picture.things().stream()
                        .map(thing -> drawn(thing, reader))
                        .toList());
    }

    private static Html drawn(Drawn thing, Reader reader) {
        if (thing instanceof Drawn.Sign sign) {
            return sign(sign, reader);
        } else if (thing instanceof Drawn.Line line) {
            return rectangle(line.meaning(), line.box());
        } else if (thing instanceof Drawn.Area area) {
            return area(area, reader);
        }
        return words((Drawn.Words) thing, reader);
    }

    private static Html sign(Drawn.Sign sign, Reader reader) {
        double scale = sign.size() / 1000;
        return Html.element("g")
                .with("class", sign.meaning())
                .with("transform", "translate(" + number(sign.x()) + " " + number(sign.y()) + ")")
                .holding(Html.element("title").holding(sign.words().in(reader).plain()))
                .holding(Html.element("path")
                        .with(
                                "transform",
                                "scale(" + number(sign.wide() * scale) + " " + number(sign.tall() * scale) + ")")
                        .with("d", sign.sign().outline()));
    }

    private static Html.Element rectangle(String meaning, Box box) {
        return Html.element("rect")
                .with("class", meaning)
                .with("x", number(box.left()))
                .with("y", number(box.top()))
                .with("width", number(box.width()))
                .with("height", number(box.height()));
    }

    private static Html area(Drawn.Area area, Reader reader) {
        StringBuilder path = new StringBuilder();
        for (Drawn.Stroke stroke : area.outline()) {
            path.append(path.length() == 0 ? "M" : stroke.isCurve() ? "C" : "L");
            String between = "";
            for (double number : stroke.numbers()) {
                path.append(between).append(number(number));
                between = " ";
            }
        }
        Html.Element drawn = Html.element("path")
                .with("class", area.meaning())
                .with("d", path.append('Z').toString())
                .with(
                        "fill",
                        switch (area.fill()) {
                            case BLACK -> INK;
                            case GREY -> "#8a8a8a";
                            case WHITE -> "#ffffff";
                        });
        Html.Element edged =
                area.border() > 0 ? drawn.with("stroke", INK).with("stroke-width", number(area.border())) : drawn;
        return area.words().isEmpty()
                ? edged
                : edged.holding(
                        Html.element("title").holding(area.words().in(reader).plain()));
    }

    /** As wide as it was laid out, whatever face a reader has. */
    private static Html words(Drawn.Words words, Reader reader) {
        String text = words.text().in(reader).plain();
        Html.Element written = Html.element("text")
                .with("class", words.meaning())
                .with("x", number(words.x()))
                .with("y", number(words.y()))
                .with("font-size", number(words.size()))
                .with("font-family", Typeface.FAMILY);
        Html.Element faced = words.face() == Typeface.BOLD ? written.with("font-weight", "700") : written;
        return faced.with("textLength", number(words.face().width(text) * words.size()))
                .with("lengthAdjust", "spacingAndGlyphs")
                .holding(text);
    }

    /** At most five decimals, none where there is nothing behind them. */
    static String number(double number) {
        long parts = Math.round(number * PARTS);
        StringBuilder text = new StringBuilder(12);
        text.append(parts < 0 ? "-" : "").append(Math.abs(parts) / PARTS);
        long behind = Math.abs(parts) % PARTS;
        if (behind > 0) {
            text.append('.');
            for (long place = PARTS / 10; behind > 0; place /= 10) {
                text.append(behind / place);
                behind %= place;
            }
        }
        return text.toString();
    }
}
