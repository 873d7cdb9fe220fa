package monochord.paper.page;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Picture;
import monochord.view.drawn.Typeface;

/**
 * Words set in lines of a known width.
 *
 * @param size in millimetres
 */
public record PageText(Typeface face, double size) {
    private static final PageText TITLE = new PageText(Typeface.BOLD, 6.4);
    private static final PageText HEADING = new PageText(Typeface.BOLD, 4.4);
    private static final PageText NAME = new PageText(Typeface.BOLD, 3.9);
    private static final PageText BODY = new PageText(Typeface.REGULAR, 3.5);
    private static final PageText SMALL = new PageText(Typeface.REGULAR, 3);

    private static final double FEET = 0.95;
    private static final double LINE = 1.28;

    /** For the top of a page. */
    public static PageText title() {
        return TITLE;
    }

    /** For the head of a section. */
    public static PageText heading() {
        return HEADING;
    }

    /** For the name of one thing. */
    public static PageText name() {
        return NAME;
    }

    /** For what is read. */
    public static PageText body() {
        return BODY;
    }

    /** For notes in passing. */
    public static PageText small() {
        return SMALL;
    }

    /** In as many lines as are needed; a word that is wider than a line is broken. */
    public Picture set(Phrase phrase, double width, Reader reader) {
        List<Drawn> things = new ArrayList<>();
        List<String> lines = lines(phrase.in(reader).plain(), width);
        for (int i = 0; i < lines.size(); i++) {
            things.add(new Drawn.Words("words", Phrase.typed(lines.get(i)), 0, size * (FEET + LINE * i), size, face));
        }
        double widest = lines.stream().mapToDouble(this::width).max().orElse(0);
        return new Picture(things, widest, size * LINE * lines.size());
    }

    /** How wide a text is in one line. */
    public double width(String text) {
        return face.width(text) * size;
    }

    private List<String> lines(String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            for (String piece : pieces(word, width)) {
                if (line.length() > 0 && width(line + " " + piece) > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.length() > 0 ? " " : "").append(piece);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private List<String> pieces(String word, double width) {
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        word.codePoints().forEach(character -> {
            String next = Character.toString(character);
            if (piece.length() > 0 && width(piece + next) > width) {
                pieces.add(piece.toString());
                piece.setLength(0);
            }
            piece.append(next);
        });
        pieces.add(piece.toString());
        return pieces;
    }
}
