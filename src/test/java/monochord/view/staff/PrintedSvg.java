package monochord.view.staff;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A picture of ours as somebody else reads it: XML, and the boxes of its outlines as the JDK's geometry finds them. */
final class PrintedSvg {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");
    private static final Map<String, Path2D> OUTLINES = new ConcurrentHashMap<>();

    /** Paper, from 0 and 0. */
    final Rectangle2D paper;

    final List<Thing> things = new ArrayList<>();

    /**
     * @param origin where a sign is set, the corner of a line, the beginning of words
     * @param box empty for words
     */
    record Thing(String meaning, String words, double[] origin, Rectangle2D box, Shape ink) {
        @Override
        public String toString() {
            return meaning + " in " + box;
        }

        boolean is(String kind) {
            return meaning.equals(kind) || meaning.startsWith(kind + " ");
        }

        /** {@code Eb4} of {@code note Eb4}. */
        String pitch() {
            return meaning.substring(meaning.indexOf(' ') + 1);
        }

        /** Whether outlines overlap, and not only the boxes around them. */
        boolean inkTouches(Thing other) {
            Area both = new Area(ink);
            both.intersect(new Area(other.ink));
            return !both.isEmpty();
        }

        boolean touches(Thing other, double allowed) {
            Rectangle2D both = box.createIntersection(other.box);
            return both.getWidth() > allowed && both.getHeight() > 0.001;
        }
    }

    PrintedSvg(String svg) throws Exception {
        Element root = DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        double[] view = numbers(root.getAttribute("viewBox"));
        paper = new Rectangle2D.Double(view[0], view[1], view[2], view[3]);
        NodeList parts = root.getChildNodes();
        for (int i = 0; i < parts.getLength(); i++) {
            add((Element) parts.item(i));
        }
    }

    private void add(Element part) {
        String meaning = part.getAttribute("class");
        String words = part.getTextContent();
        switch (part.getTagName()) {
            case "title" -> {}
            case "g" -> {
                double[] at = numbers(part.getAttribute("transform"));
                Element path = (Element) part.getElementsByTagName("path").item(0);
                double[] scale = numbers(path.getAttribute("transform"));
                AffineTransform set = AffineTransform.getTranslateInstance(at[0], at[1]);
                set.scale(scale[0], scale[1]);
                Path2D outline = OUTLINES.computeIfAbsent(path.getAttribute("d"), PrintedSvg::outline);
                Shape ink = set.createTransformedShape(outline);
                things.add(new Thing(meaning, words, at, ink.getBounds2D(), ink));
            }
            case "rect" -> {
                double x = Double.parseDouble(part.getAttribute("x"));
                double y = Double.parseDouble(part.getAttribute("y"));
                double wide = Double.parseDouble(part.getAttribute("width"));
                double tall = Double.parseDouble(part.getAttribute("height"));
                Rectangle2D box = new Rectangle2D.Double(x, y, wide, tall);
                things.add(new Thing(meaning, words, new double[] {x, y}, box, box));
            }
            case "path" -> {
                Path2D ink = outline(part.getAttribute("d"));
                Rectangle2D box = ink.getBounds2D();
                things.add(new Thing(meaning, words, new double[] {box.getX(), box.getY()}, box, ink));
            }
            case "text" ->
                things.add(new Thing(
                        meaning,
                        words,
                        new double[] {
                            Double.parseDouble(part.getAttribute("x")), Double.parseDouble(part.getAttribute("y"))
                        },
                        new Rectangle2D.Double(),
                        new Rectangle2D.Double()));
            default -> throw new IllegalArgumentException(part.getTagName());
        }
    }

    List<Thing> all(String kind) {
        return things.stream().filter(thing -> thing.is(kind)).toList();
    }

    private static double[] numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .mapToDouble(found -> Double.parseDouble(found.group()))
                .toArray();
    }

    private static Path2D outline(String text) {
        Path2D path = new Path2D.Double();
        Matcher part = Pattern.compile("([MLQCZ])([^MLQCZ]*)").matcher(text);
        while (part.find()) {
            double[] at = numbers(part.group(2));
            switch (part.group(1)) {
                case "M" -> path.moveTo(at[0], at[1]);
                case "L" -> path.lineTo(at[0], at[1]);
                case "Q" -> path.quadTo(at[0], at[1], at[2], at[3]);
                case "C" -> path.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
                default -> path.closePath();
            }
        }
        return path;
    }
}
