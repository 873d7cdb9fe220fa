package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.DrawnSvg;
import monochord.view.drawn.Picture;
import monochord.view.web.Html;

/**
 * Engraved music as SVG, for a file of its own or within a page. Each thing has its meaning for its class, and a title;
 * the whole is told in one sentence to whoever cannot see it.
 */
public final class StaffSvg {
    /** Pixels a staff space has on a screen. */
    private static final int PIXELS = 8;

    private StaffSvg() {}

    /** @param reader whose note names and language it is for */
    public static Html.Element of(StaffMusic music, double width, Reader reader) {
        return of(music, Engraving.of(music, width, reader), reader);
    }

    /** With every line as wide as the paper. */
    public static Html.Element filled(StaffMusic music, double width, Reader reader) {
        return of(music, Engraving.filled(music, width, reader), reader);
    }

    private static Html.Element of(StaffMusic music, Picture picture, Reader reader) {
        return DrawnSvg.of("staff", words(music).in(reader).plain(), picture, PIXELS, reader);
    }

    /** A file of its own. */
    public static String file(StaffMusic music, Reader reader) {
        return of(music, Engraving.PAGE, reader).write() + "\n";
    }

    /** {@code Dm7 on a staff: D4, F4, A4, C5.} */
    private static Phrase words(StaffMusic music) {
        List<Phrase> columns = music.columns().stream()
                .map(StaffSvg::words)
                .filter(words -> !words.isEmpty())
                .toList();
        return columns.isEmpty()
                ? Phrase.sentence("{0} on a staff.", music.title())
                : Phrase.sentence("{0} on a staff: {1}.", music.title(), Phrase.joined("; ", columns));
    }

    private static Phrase words(StaffColumn column) {
        List<Phrase> said = new ArrayList<>();
        if (!column.above().isEmpty()) {
            said.add(column.above());
        }
        Phrase upper = row(column, 0);
        Phrase lower = row(column, 1);
        if (!upper.isEmpty() && !lower.isEmpty()) {
            said.add(Phrase.of("{0} below {1}", lower, upper));
        } else if (!upper.isEmpty() || !lower.isEmpty()) {
            said.add(upper.isEmpty() ? lower : upper);
        }
        return said.isEmpty() ? Phrase.NOTHING : Phrase.row(said);
    }

    private static Phrase row(StaffColumn column, int staff) {
        List<?> pitches = column.pitches(staff);
        return pitches.isEmpty() ? Phrase.NOTHING : Phrase.joined(", ", pitches);
    }
}
