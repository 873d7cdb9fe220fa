package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import monochord.lesson.Filling;
import monochord.lesson.TextRun;
import monochord.lesson.TextRun.RunStyle;
import monochord.lesson.Trouble;
import monochord.text.Phrase;
import monochord.text.SafeText;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** The runs of text in one block. Goes from node to node without recursion, for emphasis can be nested as deep as one likes. */
final class Inlines {
    private final List<SourceLine> lines;
    private final Faults faults;
    private final List<TextRun> spans = new ArrayList<>();
    private final StringBuilder run = new StringBuilder();
    /** Where in the file the characters of the run stand: by index in the run, the start of each node's text. */
    private final TreeMap<Integer, SourceSpan> places = new TreeMap<>();

    private RunStyle style = RunStyle.PLAIN;

    private Inlines(List<SourceLine> lines, Faults faults) {
        this.lines = lines;
        this.faults = faults;
    }

    static List<TextRun> of(Node block, List<SourceLine> lines, Faults faults) {
        Inlines inlines = new Inlines(lines, faults);
        for (Node node = block.getFirstChild(); node != null; node = next(node, block)) {
            inlines.add(node, block);
        }
        inlines.close();
        return inlines.spans;
    }

    private static Node next(Node node, Node block) {
        if (node.getFirstChild() != null) {
            return node.getFirstChild();
        }
        Node up = node;
        while (up != block && up.getNext() == null) {
            up = up.getParent();
        }
        return up == block ? null : up.getNext();
    }

    private void add(Node node, Node block) {
        if (node instanceof Text text) {
            append(text.getLiteral(), node, styleOf(node, block));
        } else if (node instanceof Code code) {
            append(code.getLiteral(), node, RunStyle.CODE);
        } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
            append(" ", node, styleOf(node, block));
        } else if (node instanceof Link || node instanceof Image || node instanceof HtmlInline) {
            fault(node);
        }
    }

    private static RunStyle styleOf(Node node, Node block) {
        RunStyle style = RunStyle.PLAIN;
        for (Node up = node.getParent(); up != block && style != RunStyle.STRONG; up = up.getParent()) {
            style = up instanceof StrongEmphasis ? RunStyle.STRONG : up instanceof Emphasis ? RunStyle.EMPHASIS : style;
        }
        return style;
    }

    private void fault(Node node) {
        SourceSpan at = node.getSourceSpans().get(0);
        SourceLine line = lines.get(at.getLineIndex());
        Phrase what = Phrase.of(
                node instanceof Link
                        ? "a link is not followed"
                        : node instanceof Image ? "an image is not shown" : "HTML is not read");
        faults.in(line, 0, new Trouble(at.getColumnIndex(), what, Phrase.of("write it in words")));
    }

    private void append(String text, Node node, RunStyle newStyle) {
        if (newStyle != style) {
            close();
            style = newStyle;
        }
        if (!node.getSourceSpans().isEmpty()) {
            places.put(run.length(), node.getSourceSpans().get(0));
        }
        run.append(text);
    }

    private void close() {
        if (run.length() > 0) {
            String text = run.toString();
            Filling.troubles(text).forEach(this::fault);
            text.codePoints().filter(c -> !SafeText.isSafe(c)).limit(1).forEach(c -> unsafe(text, c));
            spans.add(new TextRun(SafeText.oneLine(text), style));
        }
        run.setLength(0);
        places.clear();
    }

    /** An unsafe character that was written as an entity. */
    private void unsafe(String text, int codePoint) {
        int place = text.indexOf(codePoint);
        Phrase code = Phrase.typed("U+%04X".formatted(codePoint));
        fault(new Trouble(place, Phrase.of("the control character {0}", code), Phrase.of("leave it out")));
    }

    private void fault(Trouble trouble) {
        var before = places.floorEntry(trouble.place());
        if (before == null) {
            return;
        }
        SourceSpan at = before.getValue();
        int place = at.getColumnIndex() + trouble.place() - before.getKey();
        faults.in(lines.get(at.getLineIndex()), 0, new Trouble(place, trouble.what(), trouble.instead()));
    }
}
