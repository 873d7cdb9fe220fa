package monochord.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.LongStream;
import monochord.paper.page.PageSize;
import monochord.paper.page.PdfPages;
import monochord.practice.Question;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.Key;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What stands on a sheet and on its key, read back from the printed file. */
class WorksheetTest {
    private static List<Question> questions(String skill, String key) {
        return LongStream.range(0, 6)
                .mapToObj(seed -> Skills.find(skill).orElseThrow().question(Key.parse(key), seed))
                .toList();
    }

    private static String printed(Handout handout) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfPages.write(
                out,
                handout.title(),
                HandoutPages.of(handout, PageSize.A4, Reader.ENGLISH).iterator(),
                Reader.ENGLISH);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    /** No answer on the sheet, each on its key; each question on both. */
    @Test
    void noAnswerOnTheSheetAndEachOnTheKey() throws IOException {
        for (String skill : List.of("triad-spelling", "seventh-spelling", "scale-spelling")) {
            Worksheet sheet = Worksheet.of(Phrase.of("Test"), questions(skill, "Gb"));
            String asked = printed(sheet.sheet());
            String key = printed(sheet.key());
            for (Question question : sheet.questions()) {
                String answer = Worksheet.answer(question).toString();
                assertFalse(asked.contains(answer), () -> answer + " stands on the sheet: " + asked);
                assertTrue(key.contains(answer), () -> answer + " is missing on the key: " + key);
            }
            assertTrue(asked.contains("Sheet " + sheet.code()));
            assertTrue(key.contains("Key to sheet " + sheet.code()));
        }
    }

    @Test
    void theCodeTellsQuestionsApart() {
        Worksheet one = Worksheet.of(Phrase.of("Test"), questions("triad-spelling", "C"));
        Worksheet same = Worksheet.of(Phrase.of("Other title"), questions("triad-spelling", "C"));
        Worksheet other = Worksheet.of(Phrase.of("Test"), questions("triad-spelling", "D"));
        assertEquals(one.code(), same.code());
        assertFalse(one.code().equals(other.code()));
    }

    @Test
    void printedAnswersBearTheSignsOfPrint() {
        Question question = Skills.find("triad-spelling").orElseThrow().question(Key.parse("C"), "Abm");
        assertEquals("A♭ C♭ E♭", Worksheet.answer(question).toString());
    }

    @Test
    void paperHasNoSound() {
        List<Question> heard = questions("ear-interval", "C");
        assertThrows(IllegalArgumentException.class, () -> Worksheet.of(Phrase.of("Test"), heard));
    }
}
