package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WrapTest {
    private static final String TEXT = """
            Play up the scale of D major to the sixth degree, B. The key's own chord there is minor: Bm.

            - F . C | G . A♭maj7 | C°7 D7(♭9,♯11) | and the band holds the last chord for two bars
            12. Slide that one finger down a half step   and build a major chord on it: B♭ D F.""";

    @Test
    void aBarLineAndAHoldStayWithTheChordBefore() {
        assertWrapped("- F . C | G . A♭maj7 | C°7 means that", 20, """
                - F . C | G .
                  A♭maj7 | C°7 means
                  that
                """);
    }

    @Test
    void linesAfterTheFirstHangBehindTheListMark() {
        assertWrapped("12. Slide one finger down a half step", 20, """
                12. Slide one finger
                    down a half step
                """);
        assertWrapped("  • Slide one finger down", 20, """
                  • Slide one finger
                    down
                """);
    }

    @Test
    void aWordWiderThanTheLineIsCutBetweenSigns() {
        assertWrapped("Now " + "𝄪".repeat(25) + " end", 20, """
                Now
                𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪𝄪
                𝄪𝄪𝄪𝄪𝄪 end
                """);
    }

    @Test
    void aNoBreakSpaceHoldsTogether() {
        assertWrapped("The tonic here is E\u00A0flat\u00A0minor", 20, """
                The tonic here is
                E\u00A0flat\u00A0minor
                """);
    }

    @Test
    void aLineThatFitsStaysAsItIs() {
        assertWrapped("    ██   A♭", 20, "    ██   A♭\n");
    }

    @Test
    void theStylesOfTheWordsStay() {
        StyledLine line = StyledLine.of("build on the sixth ").plus("B♭ D F", Style.ROOT);
        StyledText wrapped = StyledText.of(line).wrapped(22);
        assertEquals("build on the sixth B♭\nD F", wrapped.plain());
        assertEquals(new Span("D F", Style.ROOT), wrapped.lines().get(1).spans().get(0));
    }

    @Test
    void everyWidthIsKeptAndNoWordLost() {
        for (int width = 20; width <= 200; width++) {
            StyledText wrapped = StyledText.of(TEXT).wrapped(width);
            assertTrue(wrapped.columns() <= width, wrapped.plain());
            assertFalse(wrapped.plain().lines().anyMatch(line -> line.endsWith(" ")), wrapped.plain());
            assertEquals(TEXT.replaceAll("\\s+", " "), wrapped.plain().replaceAll("\\s+", " "));
        }
    }

    private static void assertWrapped(String text, int width, String expected) {
        assertEquals(expected, StyledText.of(text).wrapped(width).plain() + "\n");
    }
}
