package monochord.view.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever text goes into a page, no element and no attribute comes out of it. */
class HtmlTest {
    @Test
    void theFiveSignsThatSteerAPageAreEscaped() {
        assertEquals(
                "<p title=\"&lt;&gt;&amp;&quot;&apos;\">&lt;&gt;&amp;&quot;&apos;</p>",
                Html.element("p").with("title", "<>&\"'").holding("<>&\"'").write());
    }

    /** Source: OWASP XSS Filter Evasion Cheat Sheet, classes of attack from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "' onmouseover='alert(1)",
                "<svg/onload=alert(1)>",
                "</pre></section><iframe src=javascript:alert(1)>",
                "<!--><script>alert(1)</script>",
                "<style>@import 'x'</style>",
                "&#60;script&#62;"
            })
    void nothingThatIsTypedBecomesMarkup(String hostile) {
        String written =
                Html.element("p").with("title", hostile).holding(hostile).write();

        assertEquals(2, written.chars().filter(c -> c == '<').count(), written);
        assertEquals(2, written.chars().filter(c -> c == '"').count(), written);
        assertEquals(0, written.chars().filter(c -> c == '\'').count(), written);
    }

    @Test
    void controlCharactersAreShownAsUnknownOnes() {
        assertEquals(
                "<p>a\uFFFDb\uFFFDc</p>",
                Html.element("p").holding("a\u001Bb\u202Ec").write());
    }

    @Test
    void aNameThatIsNoneIsASlipOfOurs() {
        for (String name : List.of("", "p onload", "p>", "1p", "p/")) {
            assertThrows(IllegalArgumentException.class, () -> Html.element(name), name);
            assertThrows(IllegalArgumentException.class, () -> Html.element("p").with(name, ""), name);
        }
    }

    @Test
    void anElementThatHoldsNothingByNatureIsNotClosed() {
        assertEquals(
                "<meta charset=\"utf-8\">",
                Html.element("meta").with("charset", "utf-8").write());
    }
}
