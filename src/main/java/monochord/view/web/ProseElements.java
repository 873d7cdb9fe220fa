package monochord.view.web;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import monochord.lesson.ProseBlock;
import monochord.lesson.TextRun;

/** Blocks of prose as elements of a page; items that follow each other become one list. */
final class ProseElements {
    private final List<Html> done = new ArrayList<>();
    /** The lists that are open, the innermost first, each with its items so far. */
    private final Deque<Open> open = new ArrayDeque<>();

    private record Open(boolean numbered, int start, List<Html.Element> items) {
        Html.Element element() {
            Html.Element list = Html.element(numbered ? "ol" : "ul");
            return (numbered && start != 1 ? list.with("start", Integer.toString(start)) : list).holding(items);
        }
    }

    private ProseElements() {}

    static List<Html> of(List<ProseBlock> blocks) {
        ProseElements prose = new ProseElements();
        blocks.forEach(prose::add);
        prose.closeTo(0);
        return prose.done;
    }

    private void add(ProseBlock block) {
        if (block instanceof ProseBlock.ListItem item) {
            item(item);
            return;
        }
        closeTo(0);
        String name = block instanceof ProseBlock.Heading heading ? "h" + heading.level() : "p";
        done.add(Html.element(name).holding(spans(block)));
    }

    private void item(ProseBlock.ListItem item) {
        boolean numbered = item.number() > 0;
        closeTo(item.depth());
        if (open.size() == item.depth() && open.peek().numbered != numbered) {
            closeTo(item.depth() - 1);
        }
        while (open.size() < item.depth() - 1) {
            begin(false, 0);
            open.peek().items.add(Html.element("li"));
        }
        if (open.size() < item.depth()) {
            begin(numbered, item.number());
        }
        open.peek().items.add(Html.element("li").holding(spans(item)));
    }

    private void begin(boolean numbered, int start) {
        open.push(new Open(numbered, start, new ArrayList<>()));
    }

    /** Ends the lists that lie deeper; each becomes part of the last item of the list it lies in. */
    private void closeTo(int depth) {
        while (open.size() > depth) {
            Html.Element list = open.pop().element();
            if (open.isEmpty()) {
                done.add(list);
            } else {
                List<Html.Element> outer = open.peek().items;
                outer.set(outer.size() - 1, outer.get(outer.size() - 1).holding(list));
            }
        }
    }

    private static List<Html> spans(ProseBlock block) {
        return block.spans().stream().map(ProseElements::span).toList();
    }

    private static Html span(TextRun span) {
        return switch (span.style()) {
            case PLAIN -> Html.text(span.text());
            case EMPHASIS -> Html.element("em").holding(span.text());
            case STRONG -> Html.element("strong").holding(span.text());
            case CODE -> Html.element("code").holding(span.text());
        };
    }
}
