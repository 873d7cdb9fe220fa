package monochord.signs;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes the outlines of some signs of a music font as a table. Each is checked against the box that the font's own
 * metadata give for the name, so that no sign can stand under the name of another.
 *
 * <p>Source: names and code points, W3C Standard Music Font Layout 1.4; 1 em is 4 staff spaces.
 */
public final class CutSigns {
    /** At this size one unit is a thousandth of a staff space. */
    private static final int SIZE = 4000;

    private static final double NEAR = 0.08;

    private static final Map<String, Integer> SIGNS = new LinkedHashMap<>();

    static {
        SIGNS.put("brace", 0xE000);
        SIGNS.put("gClef", 0xE050);
        SIGNS.put("fClef", 0xE062);
        SIGNS.put("noteheadWhole", 0xE0A2);
        SIGNS.put("noteheadHalf", 0xE0A3);
        SIGNS.put("noteheadBlack", 0xE0A4);
        SIGNS.put("accidentalFlat", 0xE260);
        SIGNS.put("accidentalNatural", 0xE261);
        SIGNS.put("accidentalSharp", 0xE262);
        SIGNS.put("accidentalDoubleSharp", 0xE263);
        SIGNS.put("accidentalDoubleFlat", 0xE264);
        SIGNS.put("accidentalTripleSharp", 0xE265);
        SIGNS.put("accidentalTripleFlat", 0xE266);
        SIGNS.put("gClefChange", 0xE07A);
        SIGNS.put("fClefChange", 0xE07C);
        SIGNS.put("noteheadSlashHorizontalEnds", 0xE101);
        SIGNS.put("noteheadSlashWhiteWhole", 0xE102);
        SIGNS.put("noteheadSlashWhiteHalf", 0xE103);
        SIGNS.put("augmentationDot", 0xE1E7);
        SIGNS.put("flag8thUp", 0xE240);
        SIGNS.put("flag8thDown", 0xE241);
        SIGNS.put("flag16thUp", 0xE242);
        SIGNS.put("flag16thDown", 0xE243);
        SIGNS.put("flag32ndUp", 0xE244);
        SIGNS.put("flag32ndDown", 0xE245);
        SIGNS.put("restWhole", 0xE4E3);
        SIGNS.put("restHalf", 0xE4E4);
        SIGNS.put("restQuarter", 0xE4E5);
        SIGNS.put("rest8th", 0xE4E6);
        SIGNS.put("rest16th", 0xE4E7);
        SIGNS.put("rest32nd", 0xE4E8);
        SIGNS.put("timeSig0", 0xE080);
        SIGNS.put("timeSig1", 0xE081);
        SIGNS.put("timeSig2", 0xE082);
        SIGNS.put("timeSig3", 0xE083);
        SIGNS.put("timeSig4", 0xE084);
        SIGNS.put("timeSig5", 0xE085);
        SIGNS.put("timeSig6", 0xE086);
        SIGNS.put("timeSig7", 0xE087);
        SIGNS.put("timeSig8", 0xE088);
        SIGNS.put("timeSig9", 0xE089);
        SIGNS.put("tuplet2", 0xE882);
        SIGNS.put("tuplet3", 0xE883);
        SIGNS.put("tuplet4", 0xE884);
        SIGNS.put("tuplet5", 0xE885);
        SIGNS.put("tuplet6", 0xE886);
        SIGNS.put("tuplet7", 0xE887);
    }

    private CutSigns() {}

    /** @param arguments the folder of the font, and the table to write */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Font font = Font.createFont(Font.TRUETYPE_FONT, file(folder)).deriveFont((float) SIZE);
        String metadata = Files.readString(folder.resolve("metadata.json"));
        StringBuilder table =
                new StringBuilder("# name\tbox: left, top, right, bottom\tcorners left free: NE, NW, SE, SW"
                        + "\toutline; thousandths of a staff space, y down. Licence: music-signs-licence.txt\n");
        for (Map.Entry<String, Integer> sign : SIGNS.entrySet()) {
            table.append(row(font, sign.getKey(), sign.getValue(), metadata)).append('\n');
        }
        Files.writeString(Path.of(arguments[1]), table);
    }

    private static File file(Path folder) throws IOException {
        try (DirectoryStream<Path> fonts = Files.newDirectoryStream(folder, "*.otf")) {
            return fonts.iterator().next().toFile();
        }
    }

    private static String row(Font font, String name, int code, String metadata) {
        var shape = font.createGlyphVector(
                        new FontRenderContext(new AffineTransform(), true, true), new String(Character.toChars(code)))
                .getOutline();
        Rectangle2D box = shape.getBounds2D();
        String boxes = metadata.substring(metadata.indexOf("\"glyphBBoxes\""));
        check(name, "left", box.getMinX(), pair(boxes, name, "bBoxSW")[0]);
        check(name, "bottom", -box.getMaxY(), pair(boxes, name, "bBoxSW")[1]);
        check(name, "right", box.getMaxX(), pair(boxes, name, "bBoxNE")[0]);
        check(name, "top", -box.getMinY(), pair(boxes, name, "bBoxNE")[1]);
        String anchors = metadata.substring(metadata.indexOf("\"glyphsWithAnchors\""));
        StringBuilder corners = new StringBuilder();
        for (String corner : new String[] {"NE", "NW", "SE", "SW"}) {
            double[] free = pair(anchors, name, "cutOut" + corner);
            corners.append(corners.length() == 0 ? "" : " ")
                    .append(free == null ? "-" : Math.round(1000 * free[0]) + "," + Math.round(-1000 * free[1]));
        }
        return String.join(
                "\t",
                name,
                Math.round(box.getMinX()) + " " + Math.round(box.getMinY()) + " " + Math.round(box.getMaxX()) + " "
                        + Math.round(box.getMaxY()),
                corners,
                outline(shape.getPathIterator(null)));
    }

    private static void check(String name, String side, double drawn, double told) {
        if (Math.abs(drawn / 1000 - told) > NEAR) {
            throw new IllegalStateException(name + ": its " + side + " is " + drawn / 1000 + ", not " + told);
        }
    }

    /** The two numbers under a name within the entry of a sign, or null. */
    private static double[] pair(String json, String sign, String name) {
        Matcher entry =
                Pattern.compile("\"" + sign + "\"\\s*:\\s*\\{([^{}]*)\\}").matcher(json);
        if (!entry.find()) {
            return null;
        }
        Matcher pair = Pattern.compile("\"" + name + "\"\\s*:\\s*\\[\\s*([-0-9.eE]+)\\s*,\\s*([-0-9.eE]+)\\s*\\]")
                .matcher(entry.group(1));
        return pair.find() ? new double[] {Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2))} : null;
    }

    private static String outline(PathIterator path) {
        StringBuilder text = new StringBuilder();
        double[] at = new double[6];
        for (; !path.isDone(); path.next()) {
            int kind = path.currentSegment(at);
            text.append("MLQCZ".charAt(kind));
            int numbers = new int[] {2, 2, 4, 6, 0}[kind];
            for (int i = 0; i < numbers; i++) {
                text.append(i == 0 ? "" : " ").append(Math.round(at[i]));
            }
        }
        return text.toString();
    }
}
