package monochord.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.note.Signs;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever was typed stands in Markdown as it was; read by a parser of Markdown. */
class HandoutMarkdownTest {
    private static String line(String typed) {
        Handout.Block block = new Handout.Block(Phrase.NOTHING, List.of(Phrase.typed(typed)), List.of());
        Handout handout = new Handout(
                Phrase.of("Feedback"),
                List.of(),
                List.of(new Handout.HandoutSection(Phrase.NOTHING, 1, List.of(block))),
                Phrase.NOTHING);
        return HandoutMarkdown.of(handout, Reader.of(Signs.MUSIC));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "*F* A C",
                "# F",
                "F#",
                "- A",
                "+ A",
                "1. A",
                "12) A",
                "<script>alert(1)</script>",
                "[a](http://b.example)",
                "`A`",
                "> A",
                "___",
                "===",
                "a_b_c",
                "&amp;",
                "\\",
                "| A | B |",
                "![x](y)",
                "~~~"
            })
    void nothingThatIsTypedBecomesMarkup(String typed) {
        String shown = TextContentRenderer.builder()
                .build()
                .render(Parser.builder().build().parse(line(typed)));
        assertEquals("Feedback\n\n" + typed, shown.strip().replaceAll("\n+", "\n\n"));
    }

    @Test
    void rowsAreATable() {
        Handout.HandoutFigure rows = new Handout.HandoutFigure.Rows(
                List.of(Phrase.of("pupil"), Phrase.of("right")),
                List.of(List.of(Phrase.typed("7b-04"), Phrase.of("{0}", 3))));
        Handout handout = new Handout(
                Phrase.of("The class"),
                List.of(),
                List.of(new Handout.HandoutSection(
                        Phrase.NOTHING, 1, List.of(new Handout.Block(Phrase.NOTHING, List.of(), List.of(rows))))),
                Phrase.NOTHING);
        assertEquals("""
                # The class

                | pupil | right |
                | --- | --- |
                | 7b-04 | 3 |

                """, HandoutMarkdown.of(handout, Reader.of(Signs.MUSIC)));
    }
}
