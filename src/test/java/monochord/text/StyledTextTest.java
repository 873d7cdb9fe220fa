package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StyledTextTest {
    @ParameterizedTest(name = "{0} takes {1} columns")
    @CsvSource(delimiter = '|', textBlock = """
            A♭      | 2
            F𝄪      | 2
            B𝄫m7♭5  | 6
            vii°7   | 5
            viiø7   | 5
            ──C──   | 5
            e\u0301 | 1
            和      | 2
            """)
    void aSignOfMusicTakesOneColumn(String text, int columns) {
        assertEquals(columns, new Span(text).columns());
    }

    @ParameterizedTest
    @CsvSource({"C,1", "Cb,2", "Cbb,3", "C#,2", "C##,3"})
    void everyNoteNameTakesOneColumnASign(String name, int columns) {
        for (char letter : "CDEFGAB".toCharArray()) {
            String ascii = letter + name.substring(1);
            String music = ascii.replace("bb", "𝄫")
                    .replace("##", "𝄪")
                    .replace('b', '♭')
                    .replace('#', '♯');
            assertEquals(columns, new Span(ascii).columns());
            assertEquals(Math.min(2, columns), new Span(music).columns());
            assertEquals(ascii, StyledText.of(music).in(Signs.ASCII).plain());
        }
    }

    @Test
    void noTextCanSteerATerminal() {
        assertEquals("a[31m b", new Span("a\u001B[31m\t\u0007\u009B\u202Eb").text());
    }

    @Test
    void spansOfOneStyleAreJoined() {
        StyledLine line = StyledLine.of("B♭ ").plus("D").plus("", Style.ROOT).plus(" F", Style.FIFTH);
        assertEquals(List.of(new Span("B♭ D"), new Span(" F", Style.FIFTH)), line.spans());
    }

    @Test
    void aLineBreakEndsTheLine() {
        StyledText text = StyledText.builder()
                .add("one\ntwo ")
                .add("three", Style.STRONG)
                .gap()
                .line("four")
                .build();
        assertEquals("one\ntwo three\n\nfour", text.plain());
        assertEquals(Style.STRONG, text.lines().get(1).spans().get(1).style());
    }

    @Test
    void asciiKeepsWhatTheTextSays() {
        String text = "▸ V → ♭VI · “Après” — F𝄪 …";
        String ascii = StyledText.of(text).in(Signs.ASCII).plain();
        assertEquals("> V -> bVI * \"Apres\" -- F## ...", ascii);
        assertEquals("?", StyledText.of("和").in(Signs.ASCII).plain());
    }

    @Test
    void trailingSpacesGoAcrossSpans() {
        StyledLine line = StyledLine.of("C ").plus(" ", Style.ROOT).plus("  ");
        assertEquals(StyledLine.of("C"), line.stripTrailing());
        assertTrue(StyledLine.of("  ").isBlank());
    }
}
