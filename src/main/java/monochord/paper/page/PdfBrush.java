package monochord.paper.page;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import monochord.text.Reader;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.MusicSign;
import monochord.view.drawn.Picture;
import monochord.view.drawn.Typeface;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/**
 * Draws on one page of a PDF, in millimetres from its upper left corner. A character that the face lacks is drawn as
 * something else and still told as itself to whoever copies it.
 *
 * <p>Source: ISO 32000-1, 14.9.4 on replacement text.
 */
final class PdfBrush implements AutoCloseable {
    private static final double UNIT = 1000;
    private static final float GREY = 0.54f;
    /** The height of the middle of letters above their feet, as a share of their size. */
    private static final double MIDDLE = 0.36;

    private final PDPageContentStream stream;
    private final Means means;

    /** What a document has once for all of its pages. */
    record Means(Map<Typeface, PDFont> faces, PdfSigns signs, Reader reader) {}

    PdfBrush(PDDocument document, PDPage page, Means means) throws IOException {
        this.stream = new PDPageContentStream(document, page);
        this.means = means;
        float point = (float) PdfPages.POINT;
        stream.transform(new Matrix(point, 0, 0, -point, 0, page.getMediaBox().getHeight()));
    }

    void draw(Picture picture) throws IOException {
        for (Drawn thing : picture.things()) {
            if (thing instanceof Drawn.Sign sign) {
                sign(sign);
            } else if (thing instanceof Drawn.Line line) {
                Box box = line.box();
                stream.addRect((float) box.left(), (float) box.top(), (float) box.width(), (float) box.height());
                stream.fill();
            } else if (thing instanceof Drawn.Area area) {
                area(area);
            } else {
                words((Drawn.Words) thing);
            }
        }
    }

    private void sign(Drawn.Sign sign) throws IOException {
        double scale = sign.size() / UNIT;
        sign(
                sign.sign(),
                new Matrix((float) (scale * sign.wide()), 0, 0, (float) (scale * sign.tall()), (float) sign.x(), (float)
                        sign.y()));
    }

    private void sign(MusicSign sign, Matrix place) throws IOException {
        stream.saveGraphicsState();
        stream.transform(place);
        stream.drawForm(means.signs.form(sign));
        stream.restoreGraphicsState();
    }

    private void area(Drawn.Area area) throws IOException {
        boolean first = true;
        for (Drawn.Stroke stroke : area.outline()) {
            List<Double> at = stroke.numbers();
            if (first) {
                stream.moveTo(number(at, 0), number(at, 1));
            } else if (stroke.isCurve()) {
                stream.curveTo(
                        number(at, 0), number(at, 1), number(at, 2), number(at, 3), number(at, 4), number(at, 5));
            } else {
                stream.lineTo(number(at, 0), number(at, 1));
            }
            first = false;
        }
        stream.closePath();
        stream.setNonStrokingColor(
                switch (area.fill()) {
                    case BLACK -> 0f;
                    case GREY -> GREY;
                    case WHITE -> 1f;
                });
        if (area.border() > 0) {
            stream.setLineWidth((float) area.border());
            stream.fillAndStroke();
        } else {
            stream.fill();
        }
        stream.setNonStrokingColor(0f);
    }

    private static float number(List<Double> numbers, int index) {
        return numbers.get(index).floatValue();
    }

    private void words(Drawn.Words words) throws IOException {
        double x = words.x();
        StringBuilder run = new StringBuilder();
        for (int character : words.text().in(means.reader).plain().codePoints().toArray()) {
            boolean plain = Typeface.sign(character) == null && words.face().has(character);
            if (!plain) {
                x = plain(run.toString(), words, x);
                run.setLength(0);
                x = foreign(character, words, x);
            } else {
                run.appendCodePoint(character);
            }
        }
        plain(run.toString(), words, x);
    }

    /** The place behind it. */
    private double plain(String text, Drawn.Words words, double x) throws IOException {
        if (!text.isEmpty()) {
            stream.beginText();
            stream.setFont(means.faces.get(words.face()), (float) words.size());
            stream.setTextMatrix(new Matrix(1, 0, 0, -1, (float) x, (float) words.y()));
            stream.showText(text);
            stream.endText();
        }
        return x + words.face().width(text) * words.size();
    }

    /** Under a sign of music lies a letter that nobody sees, for what is told needs one. */
    private double foreign(int character, Drawn.Words words, double x) throws IOException {
        COSDictionary told = new COSDictionary();
        told.setItem(COSName.ACTUAL_TEXT, new COSString(Character.toString(character)));
        stream.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(told));
        MusicSign sign = Typeface.sign(character);
        double behind;
        if (sign == null) {
            behind = plain(Character.toString(Typeface.UNKNOWN), words, x);
        } else {
            stream.setRenderingMode(RenderingMode.NEITHER);
            plain(Character.toString(Typeface.UNKNOWN), words, x);
            stream.setRenderingMode(RenderingMode.FILL);
            double scale = words.size() * Typeface.SIGN;
            double y = words.y() - words.size() * MIDDLE;
            sign(sign, new Matrix((float) (scale / UNIT), 0, 0, (float) (scale / UNIT), (float) x, (float) y));
            behind = x + words.face().width(Character.toString(character)) * words.size();
        }
        stream.endMarkedContent();
        return behind;
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
