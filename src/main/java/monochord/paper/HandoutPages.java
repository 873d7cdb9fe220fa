package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.paper.page.Page;
import monochord.paper.page.PageFlow;
import monochord.paper.page.PageSize;
import monochord.paper.page.PageText;
import monochord.paper.page.PrintedKeyboard;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Picture;
import monochord.view.keyboard.Drawing;
import monochord.view.staff.Engraving;
import monochord.view.staff.StaffMusic;

/** A handout as pages to print: blocks side by side in rows, and a row never torn apart. */
public final class HandoutPages {
    /** How long a staff space is, in millimetres. */
    private static final double SPACE = 1.5;
    /** The same where staves are to be written on. */
    private static final double WIDE_SPACE = 2;

    private static final double BETWEEN = 6;
    private static final double FIGURES_APART = 4;
    private static final double GAP = 3.5;
    private static final double SECTION_GAP = 6;
    private static final double LINE = 9;
    private static final double THIN = 0.2;

    private final PageFlow flow;
    private final Reader reader;

    private HandoutPages(PageFlow flow) {
        this.flow = flow;
        this.reader = flow.reader();
    }

    /** All of it from the top of a page on. */
    public static List<Page> of(Handout handout, PageSize size, Reader reader) {
        PageFlow flow = new PageFlow(size, reader);
        new HandoutPages(flow).add(handout);
        return flow.pages(handout.foot());
    }

    private void add(Handout handout) {
        flow.keep(PageText.title(), handout.title(), 0);
        handout.opening().forEach(line -> flow.keep(PageText.body(), line, 1));
        for (Handout.HandoutSection section : handout.sections()) {
            if (!section.heading().isEmpty()) {
                flow.keep(PageText.heading(), section.heading(), SECTION_GAP);
            }
            for (int i = 0; i < section.blocks().size(); i += section.across()) {
                int end = Math.min(section.blocks().size(), i + section.across());
                flow.add(row(section.blocks().subList(i, end), section.across()), GAP);
            }
        }
    }

    private Picture row(List<Handout.Block> blocks, int across) {
        double width = (flow.size().across() - (across - 1) * BETWEEN) / across;
        List<Drawn> things = new ArrayList<>();
        double tall = 0;
        for (int i = 0; i < blocks.size(); i++) {
            Picture block = block(blocks.get(i), width);
            things.addAll(block.placed(1, i * (width + BETWEEN), 0));
            tall = Math.max(tall, block.height());
        }
        return new Picture(things, flow.size().across(), tall);
    }

    private Picture block(Handout.Block block, double width) {
        Picture all = block.name().isEmpty()
                ? new Picture(List.of(), 0, 0)
                : PageText.name().set(block.name(), width, reader);
        PageText text = block.figures().isEmpty() ? PageText.body() : PageText.small();
        for (Phrase line : block.lines()) {
            all = all.above(text.set(line, width, reader), 0.3);
        }
        if (!block.figures().isEmpty()) {
            Picture figures = figure(block.figures().get(0), width);
            for (Handout.HandoutFigure figure :
                    block.figures().subList(1, block.figures().size())) {
                Picture next = figure(figure, width);
                figures = figures.width() + FIGURES_APART + next.width() <= width * 1.3
                        ? figures.beside(next, FIGURES_APART)
                        : figures.above(next, 2);
            }
            all = all.above(figures.within(width), 1);
        }
        return all;
    }

    private Picture figure(Handout.HandoutFigure figure, double width) {
        if (figure instanceof Handout.HandoutFigure.KeyboardFigure keys) {
            return keys.range()
                    .map(range -> PrintedKeyboard.of(keys.drawing(), range.low(), range.high(), reader))
                    .orElseGet(() -> PrintedKeyboard.of(keys.drawing(), reader));
        } else if (figure instanceof Handout.HandoutFigure.Staff staff) {
            return Engraving.of(staff.music(), width / SPACE, reader).scaled(SPACE);
        } else if (figure instanceof Handout.HandoutFigure.Rows rows) {
            return PrintedRows.of(rows, reader);
        }
        return room(((Handout.HandoutFigure.Room) figure).room(), width);
    }

    private Picture room(AnswerRoom room, double width) {
        return switch (room) {
            case LINE -> ruled(1, width);
            case LINES -> ruled(2, width);
            case STAFF -> staves(false, width);
            case HANDS -> staves(true, width);
            case KEYBOARD -> PrintedKeyboard.of(Drawing.of(Phrase.NOTHING, List.of()), reader);
        };
    }

    private Picture staves(boolean hands, double width) {
        return Engraving.filled(StaffMusic.empty(hands), width / WIDE_SPACE, reader)
                .scaled(WIDE_SPACE);
    }

    private static Picture ruled(int count, double width) {
        List<Drawn> lines = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            lines.add(new Drawn.Line("ruled", new Box(0, i * LINE - THIN, width, i * LINE)));
        }
        return new Picture(lines, width, count * LINE);
    }
}
