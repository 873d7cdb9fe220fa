package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.keyboard.Drawing;
import monochord.view.staff.StaffMusic;
import monochord.view.staff.StaffSvg;
import monochord.view.web.Html;
import monochord.view.web.KeyboardDrawn;
import monochord.view.web.WebPage;

/**
 * Something for the class to take home, before it is put on a page.
 *
 * @param opening what is said before the first section
 */
public record Handout(Phrase title, List<Phrase> opening, List<Section> sections) {
    /** How wide a staff is beside a keyboard, in staff spaces. */
    private static final double STAFF_WIDTH = 60;

    /** What stands under one heading, in order. */
    public record Section(Phrase heading, List<Block> blocks) {
        public Section {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * One chord or scale.
     *
     * @param lines what is said of it
     */
    public record Block(Phrase name, List<Phrase> lines, Drawing keyboard, Optional<StaffMusic> staff) {
        public Block {
            lines = List.copyOf(lines);
        }
    }

    public Handout {
        opening = List.copyOf(opening);
        sections = List.copyOf(sections);
    }

    /** The whole page, which needs nothing else. */
    public String page(Reader reader) {
        List<Html> content = new ArrayList<>();
        content.add(words("h1", title, reader));
        opening.forEach(line -> content.add(words("p", line, reader)));
        for (Section section : sections) {
            content.add(words("h2", section.heading, reader));
            section.blocks.forEach(block -> content.add(block(block, reader)));
        }
        return WebPage.page(
                title, Html.element("body").holding(Html.element("main").holding(content)), reader);
    }

    private static Html block(Block block, Reader reader) {
        List<Html> content = new ArrayList<>();
        content.add(words("h3", block.name, reader));
        block.lines.forEach(line -> content.add(words("p", line, reader)));
        Html.Element pictures =
                Html.element("div").with("class", "pictures").holding(KeyboardDrawn.of(block.keyboard, reader));
        content.add(block.staff
                .map(music -> pictures.holding(StaffSvg.of(music, STAFF_WIDTH, reader)))
                .orElse(pictures));
        return Html.element("section").with("class", "block").holding(content);
    }

    private static Html words(String element, Phrase phrase, Reader reader) {
        return Html.element(element).holding(phrase.in(reader).plain());
    }
}
