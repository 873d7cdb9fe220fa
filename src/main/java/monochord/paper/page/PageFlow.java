package monochord.paper.page;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Picture;

/** Puts blocks below each other, and goes to a new page before one that does not fit. */
public final class PageFlow {
    private final PageSize size;
    private final Reader reader;
    private final List<List<Drawn>> pages = new ArrayList<>();
    private final List<Picture> waiting = new ArrayList<>();
    private double y;

    public PageFlow(PageSize size, Reader reader) {
        this.size = size;
        this.reader = reader;
        newPage();
    }

    public PageSize size() {
        return size;
    }

    public Reader reader() {
        return reader;
    }

    /** What is put next begins a page, unless this one is still empty. */
    public void newPage() {
        place();
        if (pages.isEmpty() || !pages.get(pages.size() - 1).isEmpty()) {
            pages.add(new ArrayList<>());
        }
        y = PageSize.MARGIN;
    }

    /** A block that may stand last on a page; one that is higher or wider than a page is made smaller. */
    public void add(Picture block, double gap) {
        keep(block, gap);
        place();
    }

    /** A block that stands on one page with the next, such as a heading. */
    public void keep(Picture block, double gap) {
        Picture fitting = block.within(size.across());
        double most = size.lowest() - PageSize.MARGIN;
        double scale = Math.min(1, most / (fitting.height() + gap));
        Picture small = scale < 1 ? fitting.scaled(scale) : fitting;
        waiting.add(new Picture(small.placed(1, 0, gap * scale), small.width(), small.height() + gap * scale));
    }

    /** Words across the page. */
    public void add(PageText text, Phrase words, double gap) {
        add(text.set(words, size.across(), reader), gap);
    }

    /** Words that belong to what follows. */
    public void keep(PageText text, Phrase words, double gap) {
        keep(text.set(words, size.across(), reader), gap);
    }

    private void place() {
        double tall = waiting.stream().mapToDouble(Picture::height).sum();
        if (y + tall > size.lowest() && y > PageSize.MARGIN) {
            pages.add(new ArrayList<>());
            y = PageSize.MARGIN;
        }
        for (Picture block : waiting) {
            pages.get(pages.size() - 1).addAll(block.placed(1, PageSize.MARGIN, y));
            y += block.height();
        }
        waiting.clear();
    }

    /**
     * All pages; where there are several, each has its number at the foot.
     *
     * @param foot what else stands at the foot of each, perhaps nothing
     */
    public List<Page> pages(Phrase foot) {
        place();
        List<List<Drawn>> filled =
                pages.stream().filter(page -> !page.isEmpty()).toList();
        List<Page> done = new ArrayList<>();
        for (int i = 0; i < filled.size(); i++) {
            List<Drawn> things = new ArrayList<>(filled.get(i));
            foot(foot, false, things);
            if (filled.size() > 1) {
                foot(Phrase.of("Page {0} of {1}", i + 1, filled.size()), true, things);
            }
            done.add(new Page(new Picture(things, size.width(), size.height())));
        }
        return done;
    }

    private void foot(Phrase words, boolean right, List<Drawn> things) {
        if (!words.isEmpty()) {
            PageText small = PageText.small();
            double wide = small.width(words.in(reader).plain());
            double x = right ? size.width() - PageSize.MARGIN - wide : PageSize.MARGIN;
            things.add(new Drawn.Words("foot", words, x, size.height() - PageSize.FOOT, small.size(), small.face()));
        }
    }
}
