package monochord.paper.page;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.view.drawn.Box;
import monochord.view.drawn.MusicSign;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** The outlines of signs in a document, each written once. Their unit is a thousandth of a staff space, y down. */
final class PdfSigns {
    private static final int UNIT = 1000;
    private static final Pattern STEP = Pattern.compile("([MLQCZ])([^MLQCZ]*)");

    private final PDDocument document;
    private final Map<String, PDFormXObject> forms = new HashMap<>();

    PdfSigns(PDDocument document) {
        this.document = document;
    }

    PDFormXObject form(MusicSign sign) throws IOException {
        PDFormXObject known = forms.get(sign.name());
        return known != null ? known : added(sign);
    }

    private PDFormXObject added(MusicSign sign) throws IOException {
        PDFormXObject form = new PDFormXObject(document);
        Box box = sign.box();
        form.setBBox(new PDRectangle(
                (float) (box.left() * UNIT), (float) (box.top() * UNIT), (float) (box.width() * UNIT), (float)
                        (box.height() * UNIT)));
        form.setResources(new PDResources());
        try (OutputStream out = form.getContentStream().createOutputStream(COSName.FLATE_DECODE)) {
            out.write(operators(sign.outline()).getBytes(StandardCharsets.US_ASCII));
        }
        forms.put(sign.name(), form);
        return form;
    }

    /** Source: ISO 32000-1, 8.5.2 on building paths. */
    private static String operators(String outline) {
        StringBuilder text = new StringBuilder();
        Matcher step = STEP.matcher(outline);
        while (step.find()) {
            switch (step.group(1)) {
                case "M" -> text.append(step.group(2)).append(" m\n");
                case "L" -> text.append(step.group(2)).append(" l\n");
                case "C" -> text.append(step.group(2)).append(" c\n");
                case "Q" -> throw new IllegalStateException("our signs have no curves of second degree");
                default -> text.append("h\n");
            }
        }
        return text.append("f\n").toString();
    }
}
