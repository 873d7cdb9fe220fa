package monochord.view.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import monochord.lesson.ProseBlock;
import monochord.lesson.TextRun;
import org.junit.jupiter.api.Test;

/** Prose keeps its headings, its lists and what is set off in it. */
class ProseTest {
    private static String written(ProseBlock... blocks) {
        return ProseElements.of(List.of(blocks)).stream().map(Html::write).collect(Collectors.joining());
    }

    private static List<TextRun> plain(String text) {
        return List.of(new TextRun(text, TextRun.RunStyle.PLAIN));
    }

    private static ProseBlock item(int depth, int number, String text) {
        return new ProseBlock.ListItem(depth, number, plain(text));
    }

    @Test
    void headingsKeepTheirLevel() {
        assertEquals(
                "<h2>Verse</h2><h3>Bar 4</h3>",
                written(new ProseBlock.Heading(2, plain("Verse")), new ProseBlock.Heading(3, plain("Bar 4"))));
    }

    @Test
    void whatIsSetOffStaysSetOff() {
        ProseBlock block = new ProseBlock.Paragraph(List.of(
                new TextRun("Hold ", TextRun.RunStyle.PLAIN),
                new TextRun("G", TextRun.RunStyle.STRONG),
                new TextRun(" and ", TextRun.RunStyle.EMPHASIS),
                new TextRun("play", TextRun.RunStyle.CODE)));

        assertEquals("<p>Hold <strong>G</strong><em> and </em><code>play</code></p>", written(block));
    }

    @Test
    void itemsThatFollowEachOtherAreOneList() {
        assertEquals(
                "<ul><li>a</li><li>b</li></ul><p>c</p><ul><li>d</li></ul>",
                written(item(1, 0, "a"), item(1, 0, "b"), new ProseBlock.Paragraph(plain("c")), item(1, 0, "d")));
    }

    @Test
    void aListInAListIsPartOfItsItem() {
        assertEquals(
                "<ul><li>a<ol><li>b</li><li>c</li></ol></li><li>d</li></ul>",
                written(item(1, 0, "a"), item(2, 1, "b"), item(2, 2, "c"), item(1, 0, "d")));
    }

    @Test
    void aNumberedListBeginsWhereItsNumbersDo() {
        assertEquals("<ul><li>a</li></ul><ol start=\"3\"><li>b</li></ol>", written(item(1, 0, "a"), item(1, 3, "b")));
    }

    @Test
    void aListThatBeginsDeepLosesNothing() {
        assertEquals("<ul><li><ul><li>a</li></ul></li></ul>", written(item(2, 0, "a")));
    }
}
