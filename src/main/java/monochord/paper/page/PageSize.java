package monochord.paper.page;

/** Paper, upright, in millimetres. Source: ISO 216 for A4; letter is 8.5 by 11 inches. */
public enum PageSize {
    A4(210, 297),
    LETTER(215.9, 279.4);

    /** Left free on all sides. */
    static final double MARGIN = 16;
    /** What stands at the foot has its feet here, above the lower edge. */
    static final double FOOT = 9;

    private final double width;
    private final double height;

    PageSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** Between the margins. */
    public double across() {
        return width - 2 * MARGIN;
    }

    double lowest() {
        return height - MARGIN;
    }
}
