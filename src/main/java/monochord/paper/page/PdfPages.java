package monochord.paper.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.Typeface;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Pages as PDF, with the fonts in it and all words as text. The same pages give the same bytes: no date is told, and nothing
 * of the machine or of who made it.
 *
 * <p>Source: ISO 32000-1, 14.3.3 on document information, 14.4 on file identifiers.
 */
public final class PdfPages {
    /** Points in a millimetre. */
    static final double POINT = 72 / 25.4;

    private static final String NAME = "Monochord";

    private PdfPages() {}

    /** Writes pages as they come; only what is drawn on them is kept. */
    public static void write(OutputStream out, Phrase title, Iterator<Page> pages, Reader reader) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfSigns signs = new PdfSigns(document);
            Map<Typeface, PDFont> faces = new EnumMap<>(Typeface.class);
            for (Typeface face : Typeface.values()) {
                try (InputStream font = face.open()) {
                    faces.put(face, PDType0Font.load(document, font, true));
                }
            }
            while (pages.hasNext()) {
                page(pages.next(), document, new PdfBrush.Means(faces, signs, reader));
            }
            tell(document, title.in(reader).plain(), reader);
            document.save(out);
        }
    }

    private static void page(Page page, PDDocument document, PdfBrush.Means means) throws IOException {
        PDPage blank = new PDPage(new PDRectangle((float) (page.picture().width() * POINT), (float)
                (page.picture().height() * POINT)));
        document.addPage(blank);
        try (PdfBrush brush = new PdfBrush(document, blank, means)) {
            brush.draw(page.picture());
        }
    }

    private static void tell(PDDocument document, String title, Reader reader) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        information.setCreator(NAME);
        information.setProducer(NAME);
        document.getDocumentCatalog().setLanguage(reader.language().tag());
        document.setDocumentId((long) title.hashCode());
    }
}
