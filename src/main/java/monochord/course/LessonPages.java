package monochord.course;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.ProseBlock;

/**
 * Parts a lesson into pages for one window. A page ends where the learner has something to do, a question, something to
 * listen to, Java to run, before a tune that has no room, and at a heading once there is enough in the window.
 */
final class LessonPages {
    private static final int TITLE = 2;
    /** What is said to an answer, with the empty line under it. */
    private static final int VERDICT = 4;
    /** The line that says how to go on, and the prompt, each after an empty line. */
    private static final int PROMPT = 4;

    private final Measure measure;
    /** What was measured, for a part is looked at again and again while there may be room for it. */
    private final Map<LessonPart, Integer> measured = new IdentityHashMap<>();

    private final Deque<PagePiece> ahead = new ArrayDeque<>();
    private final List<LessonPage> pages = new ArrayList<>();
    private int above = TITLE;

    /** A part, or some of its blocks, and where it stands in the lesson. */
    private record PagePiece(LessonPart part, int section, int block) {
        boolean isProse() {
            return part instanceof LessonPart.ProsePart;
        }

        boolean stops() {
            return !(isProse() || part instanceof LessonPart.Show);
        }
    }

    private LessonPages(List<LessonPart> sections, Measure measure) {
        this.measure = measure;
        IntStream.range(0, sections.size()).forEach(i -> ahead.add(new PagePiece(sections.get(i), i, 0)));
    }

    static List<LessonPage> of(Lesson lesson, Measure measure) {
        LessonPages all = new LessonPages(sections(lesson), measure);
        while (!all.ahead.isEmpty()) {
            all.addPage();
        }
        return List.copyOf(all.pages);
    }

    /** The parts of a lesson, prose cut before each heading. */
    static List<LessonPart> sections(Lesson lesson) {
        return lesson.parts().stream().flatMap(part -> byHeading(part).stream()).toList();
    }

    private static List<LessonPart> byHeading(LessonPart part) {
        if (!(part instanceof LessonPart.ProsePart prose)) {
            return List.of(part);
        }
        List<LessonPart> sections = new ArrayList<>();
        List<ProseBlock> section = new ArrayList<>();
        for (ProseBlock block : prose.blocks()) {
            if (block instanceof ProseBlock.Heading && !section.isEmpty()) {
                sections.add(new LessonPart.ProsePart(prose.line(), section));
                section = new ArrayList<>();
            }
            section.add(block);
        }
        sections.add(new LessonPart.ProsePart(prose.line(), section));
        return sections;
    }

    private void addPage() {
        boolean standsAlone = above == VERDICT && isFull(List.of());
        above = standsAlone ? 0 : above;
        List<PagePiece> page = new ArrayList<>();
        while (!ahead.isEmpty() && (page.isEmpty() || !page.get(page.size() - 1).stops()) && !isFull(page)) {
            page.add(ahead.poll());
        }
        PagePiece first = page.get(0);
        pages.add(new LessonPage(
                first.section, first.block, page.stream().map(PagePiece::part).toList(), standsAlone));
        above = page.get(page.size() - 1).part instanceof LessonPart.Asks ? VERDICT : 0;
    }

    /** Whether the next section, with what is drawn in it, would push the beginning of the page out of the window. */
    private boolean isFull(List<PagePiece> page) {
        int room = measure.rows() - PROMPT - above;
        if (ahead.peek().part instanceof LessonPart.Show) {
            return !page.isEmpty() && lines(page) + picture() > room;
        }
        if (ahead.peek().part instanceof LessonPart.TunePart tune) {
            return !page.isEmpty() && lines(page) + 1 + height(tune) > room;
        }
        if (!ahead.peek().isProse()) {
            return false;
        }
        if (!page.isEmpty() || above == VERDICT) {
            return lines(page) + section() > room;
        }
        while (section() > room && cut(room)) {}
        return false;
    }

    private int height(LessonPart part) {
        return measured.computeIfAbsent(part, measure::lines);
    }

    private int lines(List<PagePiece> page) {
        return page.stream().mapToInt(piece -> 1 + height(piece.part)).sum() - (page.isEmpty() ? 0 : 1);
    }

    /**
     * Cuts a section that fills more than a window, between two paragraphs: as much of it as has room stays with what is
     * drawn or asked below.
     *
     * @return whether there was a place to cut it
     */
    private boolean cut(int room) {
        PagePiece piece = ahead.poll();
        LessonPart.ProsePart whole = (LessonPart.ProsePart) piece.part;
        List<ProseBlock> blocks = whole.blocks();
        int first = blocks.get(0) instanceof ProseBlock.Heading ? 2 : 1;
        List<Integer> cuts = IntStream.range(first, blocks.size())
                .filter(cut -> !(blocks.get(cut) instanceof ProseBlock.ListItem))
                .boxed()
                .toList();
        int cut = cuts.stream()
                .filter(place -> fits(whole.from(place), room))
                .findFirst()
                .orElse(cuts.isEmpty() ? blocks.size() : cuts.get(cuts.size() - 1));
        if (cut < blocks.size()) {
            ahead.addFirst(new PagePiece(whole.from(cut), piece.section, piece.block + cut));
        }
        ahead.addFirst(new PagePiece(whole.upTo(cut), piece.section, piece.block));
        return cut < blocks.size();
    }

    private boolean fits(LessonPart.ProsePart prose, int room) {
        ahead.addFirst(new PagePiece(prose, 0, 0));
        boolean fits = section() <= room;
        ahead.removeFirst();
        return fits;
    }

    /** Lines of the next picture, and of what is played or asked right under it. */
    private int picture() {
        PagePiece under = ahead.stream().skip(1).findFirst().orElse(null);
        return 1 + height(ahead.peek().part) + (under != null && under.stops() ? 1 + height(under.part) : 0);
    }

    /** Lines from the next part up to the next prose or place to stop. */
    private int section() {
        int lines = 0;
        int parts = 0;
        for (PagePiece piece : ahead) {
            if (parts++ > 0 && (piece.isProse() || piece.part instanceof LessonPart.TunePart)) {
                return lines; // A tune that has no room here opens the next page.
            }
            lines += 1 + height(piece.part);
            if (piece.stops()) {
                return lines;
            }
        }
        return lines;
    }
}
