package monochord.paper.page;

import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.DrawnSvg;

/** A page as an SVG picture of the size of its paper. */
public final class PageSvg {
    /** A millimetre on a screen of 96 pixels to the inch. */
    private static final double PIXELS = 96 / 25.4;

    private PageSvg() {}

    /** The whole file; its paper is white wherever it is shown. */
    public static String of(Page page, Phrase title, Reader reader) {
        return DrawnSvg.of("page", title.in(reader).plain(), page.picture(), PIXELS, reader)
                        .with("style", "background:#fff;color:#000")
                        .write()
                + "\n";
    }
}
