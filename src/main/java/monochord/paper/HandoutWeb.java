package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.keyboard.Drawing;
import monochord.view.staff.StaffMusic;
import monochord.view.staff.StaffSvg;
import monochord.view.web.Html;
import monochord.view.web.KeyboardDrawn;
import monochord.view.web.WebPage;

/** A handout as a page for a browser, which needs nothing else. */
public final class HandoutWeb {
    /** How wide a staff is beside a keyboard, in staff spaces. */
    private static final double STAFF_WIDTH = 60;

    private HandoutWeb() {}

    /** The whole page. */
    public static String of(Handout handout, Reader reader) {
        return of(List.of(handout), reader);
    }

    /** Several on one page, each printed on paper of its own. */
    public static String of(List<Handout> handouts, Reader reader) {
        List<Html> parts = handouts.stream()
                .map(handout ->
                        (Html) Html.element("section").with("class", "part").holding(content(handout, reader)))
                .toList();
        return WebPage.page(
                handouts.get(0).title(),
                Html.element("body").holding(Html.element("main").holding(parts)),
                reader);
    }

    private static List<Html> content(Handout handout, Reader reader) {
        List<Html> content = new ArrayList<>();
        content.add(words("h1", handout.title(), reader));
        handout.opening().forEach(line -> content.add(words("p", line, reader)));
        for (Handout.HandoutSection section : handout.sections()) {
            if (!section.heading().isEmpty()) {
                content.add(words("h2", section.heading(), reader));
            }
            section.blocks().forEach(block -> content.add(block(block, reader)));
        }
        if (!handout.foot().isEmpty()) {
            content.add(words("p", handout.foot(), reader).with("class", "aside"));
        }
        return content;
    }

    private static Html block(Handout.Block block, Reader reader) {
        List<Html> content = new ArrayList<>();
        if (!block.name().isEmpty()) {
            content.add(words("h3", block.name(), reader));
        }
        block.lines().forEach(line -> content.add(words("p", line, reader)));
        if (!block.figures().isEmpty()) {
            content.add(Html.element("div")
                    .with("class", "pictures")
                    .holding(block.figures().stream()
                            .map(figure -> figure(figure, reader))
                            .toList()));
        }
        return Html.element("section").with("class", "block").holding(content);
    }

    private static Html figure(Handout.HandoutFigure figure, Reader reader) {
        if (figure instanceof Handout.HandoutFigure.KeyboardFigure keys) {
            return keys.range()
                    .map(range -> KeyboardDrawn.of(keys.drawing(), range, reader))
                    .orElseGet(() -> KeyboardDrawn.of(keys.drawing(), reader));
        } else if (figure instanceof Handout.HandoutFigure.Staff staff) {
            return StaffSvg.of(staff.music(), STAFF_WIDTH, reader);
        } else if (figure instanceof Handout.HandoutFigure.Rows rows) {
            return table(rows, reader);
        }
        return room(((Handout.HandoutFigure.Room) figure).room(), reader);
    }

    private static Html table(Handout.HandoutFigure.Rows rows, Reader reader) {
        List<Html> lines = new ArrayList<>(List.of(row("th", rows.head(), reader)));
        rows.rows().forEach(row -> lines.add(row("td", row, reader)));
        return Html.element("table").holding(lines);
    }

    private static Html row(String element, List<Phrase> cells, Reader reader) {
        return Html.element("tr")
                .holding(
                        cells.stream().map(cell -> words(element, cell, reader)).toList());
    }

    private static Html room(AnswerRoom room, Reader reader) {
        Html line = Html.element("p").with("class", "ruled").holding(" ");
        return switch (room) {
            case LINE -> line;
            case LINES ->
                Html.element("div").with("class", "ruling").holding(line).holding(line);
            case STAFF -> StaffSvg.filled(StaffMusic.empty(false), STAFF_WIDTH, reader);
            case HANDS -> StaffSvg.filled(StaffMusic.empty(true), STAFF_WIDTH, reader);
            case KEYBOARD -> KeyboardDrawn.of(Drawing.of(Phrase.of("Mark the keys"), List.of()), reader);
        };
    }

    private static Html.Element words(String element, Phrase phrase, Reader reader) {
        return Html.element(element).holding(phrase.in(reader).plain());
    }
}
