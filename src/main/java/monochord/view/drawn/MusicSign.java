package monochord.view.drawn;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A printed sign with its outline, drawn around the point at which it stands: a head around the middle of its left edge.
 *
 * <p>Source: names, W3C Standard Music Font Layout 1.4; outlines, see {@code music-signs-licence.txt}.
 *
 * @param box around the outline
 * @param corners the free corners north-east, north-west, south-east, south-west: from this point on outwards nothing is
 *     drawn; null where nothing is known
 * @param outline an SVG path in thousandths of a staff space
 */
public record MusicSign(String name, Box box, List<double[]> corners, String outline) {
    private static final double UNIT = 1000;
    private static final Map<String, MusicSign> SIGNS = read();

    /** @throws IllegalArgumentException if there is no sign of this name */
    public static MusicSign named(String name) {
        MusicSign sign = SIGNS.get(name);
        if (sign == null) {
            throw new IllegalArgumentException("there is no sign " + name);
        }
        return sign;
    }

    /** The sign for an alteration in half steps from −3 to 3; 0 is the natural. */
    public static MusicSign accidental(int alteration) {
        return named(
                switch (alteration) {
                    case -3 -> "accidentalTripleFlat";
                    case -2 -> "accidentalDoubleFlat";
                    case -1 -> "accidentalFlat";
                    case 0 -> "accidentalNatural";
                    case 1 -> "accidentalSharp";
                    case 2 -> "accidentalDoubleSharp";
                    case 3 -> "accidentalTripleSharp";
                    default -> throw new IllegalArgumentException("alteration must be from -3 to 3, not " + alteration);
                });
    }

    /** Up to three boxes one over the other that hold the outline more closely than one: a flat is narrow at its top. */
    public List<Box> shape() {
        double upper = Math.min(edge(0, box.bottom()), edge(1, box.bottom()));
        double lower = Math.max(edge(2, box.top()), edge(3, box.top()));
        boolean cutAbove = upper < lower && upper > box.top() && hasCorner(0, 1);
        boolean cutBelow = upper < lower && lower < box.bottom() && hasCorner(2, 3);
        List<Box> shape = new ArrayList<>();
        double from = cutAbove ? upper : box.top();
        double to = cutBelow ? lower : box.bottom();
        if (cutAbove) {
            shape.add(new Box(side(1, box.left()), box.top(), side(0, box.right()), upper));
        }
        shape.add(new Box(box.left(), from, box.right(), to));
        if (cutBelow) {
            shape.add(new Box(side(3, box.left()), lower, side(2, box.right()), box.bottom()));
        }
        return shape;
    }

    private boolean hasCorner(int one, int other) {
        return corners.get(one) != null || corners.get(other) != null;
    }

    private double edge(int corner, double otherwise) {
        return corners.get(corner) == null ? otherwise : corners.get(corner)[1];
    }

    private double side(int corner, double otherwise) {
        return corners.get(corner) == null ? otherwise : corners.get(corner)[0];
    }

    private static Map<String, MusicSign> read() {
        Map<String, MusicSign> signs = new HashMap<>();
        try (BufferedReader table = new BufferedReader(new InputStreamReader(
                MusicSign.class.getResourceAsStream("music-signs.tsv"), StandardCharsets.UTF_8))) {
            table.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
                MusicSign sign = row(line.split("\t"));
                signs.put(sign.name, sign);
            });
        } catch (IOException broken) {
            throw new UncheckedIOException("our own table of signs cannot be read", broken);
        }
        return signs;
    }

    private static MusicSign row(String[] cells) {
        double[] box = numbers(cells[1], " ");
        List<double[]> corners = Arrays.stream(cells[2].split(" "))
                .map(corner -> corner.equals("-") ? null : numbers(corner, ","))
                .toList();
        return new MusicSign(cells[0], new Box(box[0], box[1], box[2], box[3]), corners, cells[3]);
    }

    private static double[] numbers(String text, String between) {
        return Arrays.stream(text.split(between))
                .mapToDouble(number -> Integer.parseInt(number) / UNIT)
                .toArray();
    }
}
