package monochord.paper.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import monochord.paper.ChordHandout;
import monochord.paper.HandoutPages;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.Key;
import monochord.view.drawn.Drawn;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What a printed file holds, as the library reads it back. */
class PdfPagesTest {
    private static byte[] pdf(Phrase title, List<Page> pages) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfPages.write(out, title, pages.iterator(), Reader.ENGLISH);
        return out.toByteArray();
    }

    private static byte[] handout(String key, PageSize size) throws IOException {
        return pdf(Phrase.of("Chords"), HandoutPages.of(ChordHandout.of(Key.parse(key)), size, Reader.ENGLISH));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static Page lines(String... lines) {
        PageFlow flow = new PageFlow(PageSize.A4, Reader.ENGLISH);
        for (String line : lines) {
            flow.add(PageText.body(), Phrase.typed(line), 1);
        }
        return flow.pages(Phrase.NOTHING).get(0);
    }

    /** Every sign of chords and numerals, and what people write in titles. */
    @Test
    void allWordsComeOutAgain() throws IOException {
        List<String> lines = List.of(
                "E♭maj7 C♯m7 ♭VI°7 ♯IVø7 V7(♭9,♯11) N.C. % D/F♯",
                "F𝄪 B𝄫 G𝄪m7 B𝄫maj7", "Über den Fluß – “one”, ½ · Łódź");
        String text = text(pdf(Phrase.of("A"), List.of(lines(lines.toArray(String[]::new)))));
        for (String line : lines) {
            assertTrue(text.replace("\u00a0", " ").contains(line), () -> line + " is not in " + text);
        }
    }

    @Test
    void aCharacterThatTheFaceLacksIsStillTold() throws IOException {
        assertTrue(text(pdf(Phrase.of("A"), List.of(lines("Song 東 end")))).contains("東"));
    }

    @Test
    void theSameSheetGivesTheSameBytes() throws IOException {
        assertArrayEquals(handout("Eb", PageSize.A4), handout("Eb", PageSize.A4));
    }

    @Test
    void allFontsAreInIt() throws IOException {
        try (PDDocument document = Loader.loadPDF(handout("C#", PageSize.LETTER))) {
            int fonts = 0;
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded());
                    fonts++;
                }
                assertEquals(612, page.getMediaBox().getWidth(), 0.1);
                assertEquals(792, page.getMediaBox().getHeight(), 0.1);
            }
            assertTrue(fonts >= 2);
        }
    }

    @Test
    void nothingTellsWhoMadeItWhereAndWhen() throws IOException {
        byte[] pdf = handout("D", PageSize.A4);
        String bytes = new String(pdf, StandardCharsets.ISO_8859_1);
        assertFalse(bytes.contains("Date"));
        assertFalse(bytes.contains(System.getProperty("user.home")));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals("Chords", document.getDocumentInformation().getTitle());
            assertEquals(
                    List.of("Creator", "Producer", "Title"),
                    document.getDocumentInformation().getMetadataKeys().stream()
                            .sorted()
                            .toList());
        }
    }

    /** Two pages hold what is too much for one, in order, each with its number. */
    @Test
    void whatDoesNotFitGoesToTheNextPage() throws IOException {
        PageFlow flow = new PageFlow(PageSize.A4, Reader.ENGLISH);
        IntStream.rangeClosed(1, 90).forEach(i -> flow.add(PageText.body(), Phrase.of("line {0}.", i), 1));
        String text = text(pdf(Phrase.of("A"), flow.pages(Phrase.of("foot"))));
        assertTrue(text.indexOf("line 45.") > text.indexOf("line 44."), text);
        assertTrue(text.contains("line 90."), text);
        assertTrue(text.contains("Page 2 of 2"), text);
    }

    @Test
    void aWordThatIsWiderThanThePageIsBroken() {
        String word = "a".repeat(500);
        Page page = lines(word);
        String all = page.picture().things().stream()
                .map(thing -> ((Drawn.Words) thing).text().toString())
                .reduce("", String::concat);
        assertEquals(word, all);
        assertTrue(page.picture().things().size() > 3);
    }
}
