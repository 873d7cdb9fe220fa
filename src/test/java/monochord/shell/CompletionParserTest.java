package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompletionParserTest {
    private static CompletingParsedLine cut(String line, int cursor) {
        return (CompletingParsedLine) new CompletionParser().parse(line, cursor, Parser.ParseContext.COMPLETE);
    }

    /** The place of the cursor is marked by {@code ^}. */
    @ParameterizedTest(name = "<{0}>: word {1} is <{2}>, the cursor in it at {3}")
    @CsvSource(quoteCharacter = '`', textBlock = """
            `^`,                0, ``,      0
            `sh^`,              0, `sh`,    2
            `s^h`,              0, `sh`,    1
            `^show`,            0, `show`,  0
            `show ^`,           1, ``,      0
            `show C in ^`,      3, ``,      0
            `show   C^`,        1, `C`,     1
            `show C^ in D`,     1, `C`,     1
            `show C i^n D`,     2, `in`,    1
            `show "a b^`,       2, `b`,     1
            `show \\!^`,        1, `\\!`,   2
            """)
    void theWordUnderTheCursorIsTheOneToComplete(String marked, int index, String word, int cursor) {
        String line = marked.replace("^", "");
        CompletingParsedLine cut = cut(line, marked.indexOf('^'));
        assertEquals(index, cut.wordIndex());
        assertEquals(word, cut.word());
        assertEquals(cursor, cut.wordCursor());
        assertEquals(cursor, cut.rawWordCursor());
        assertEquals(word.length(), cut.rawWordLength());
        assertEquals(line, cut.line());
        assertEquals(marked.indexOf('^'), cut.cursor());
    }

    @Test
    void candidatesAreTakenAsTheyStand() {
        assertEquals("\"a b", cut("", 0).escape("\"a b", true).toString());
    }

    @Test
    void everyCursorOfALineIsInsideAWord() {
        String line = "  play \"C  G\" at 84 ";
        for (int cursor = 0; cursor <= line.length(); cursor++) {
            CompletingParsedLine cut = cut(line, cursor);
            List<String> words = cut.words();
            assertEquals(cut.word(), words.get(cut.wordIndex()));
            String before = cut.word().substring(0, cut.wordCursor());
            assertEquals(before, line.substring(cursor - before.length(), cursor));
        }
    }
}
