package monochord.theory.note;

/**
 * Says that a text cannot be read as music: which text, where it goes wrong, and what would have worked.
 *
 * <p>It carries no stack trace. A text that cannot be read is an everyday event here (one reading is tried after
 * another), and the place that matters is the one in the text. For the same reason it holds typed values, which
 * {@code text.Phrase} puts into words when they are shown; {@link #getMessage} is English.
 */
public final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_QUOTE = 40;
    private static final Clause THE_END = Clause.of("the end");

    private final transient Refused trouble;
    private final String text;
    private final int place;

    /**
     * What goes wrong in the part of a text that was to be read.
     *
     * @param said what could have stood at the place, or why the part cannot be right
     * @param isExpected whether it is the former
     */
    private record Refused(String part, int place, String what, Clause said, boolean isExpected, String example) {
        Clause clause() {
            return Clause.of(
                    "\"{0}\" is not {1}: {2}", quote(part), Clause.of(what), isExpected ? expectation() : said);
        }

        private Clause expectation() {
            return Clause.of("expected {0} at character {1}, found {2}", said, place + 1, found());
        }

        private Clause found() {
            return place >= part.length() ? THE_END : Clause.of("'{0}'", printable(characterAt(part, place)));
        }
    }

    private Unreadable(Refused trouble, String text, int place) {
        super(null, null, false, false);
        this.trouble = trouble;
        this.text = text;
        this.place = place;
    }

    /**
     * A text that goes wrong at one character.
     *
     * @param what what it was taken for, with its article: {@code "a note name"}
     * @param place index of the first character that does not fit, from 0; the length of the text if it ends too soon
     * @param expected what could have stood there
     * @param example a text of this kind that can be read
     */
    public static Unreadable at(String text, int place, String what, String expected, String example) {
        return at(text, place, what, Clause.of(expected), example);
    }

    /** The same where what could have stood there has parts. */
    public static Unreadable at(String text, int place, String what, Clause expected, String example) {
        return new Unreadable(new Refused(text, place, what, expected, true, example), text, place);
    }

    /**
     * A text whose form is right but whose meaning is not, such as a chord with two thirds.
     *
     * @param why a clause that follows a colon, without its full stop
     */
    public static Unreadable because(String text, int place, String what, String why, String example) {
        return because(text, place, what, Clause.of(why), example);
    }

    /** The same where the clause has parts. */
    public static Unreadable because(String text, int place, String what, Clause why, String example) {
        return new Unreadable(new Refused(text, place, what, why, false, example), text, place);
    }

    /** The same trouble seen as part of a longer text, in which the unreadable part starts at {@code offset}. */
    public Unreadable within(String whole, int offset) {
        return new Unreadable(trouble, whole, offset + place);
    }

    /**
     * The same trouble in a text that was typed otherwise.
     *
     * @param part the part that cannot be read, as it was typed
     * @param placeInPart where it goes wrong in that, from 0
     */
    public Unreadable asTyped(String part, int placeInPart, String whole, int placeInWhole) {
        var typed = new Refused(part, placeInPart, trouble.what, trouble.said, trouble.isExpected, trouble.example);
        return new Unreadable(typed, whole, placeInWhole);
    }

    /**
     * The same trouble in a text that is quoted whole, without a place in it.
     *
     * @param typed as somebody typed it
     */
    public Unreadable quoting(String typed) {
        Clause said = trouble.isExpected ? Clause.of("expected {0}", trouble.said) : trouble.said;
        return new Unreadable(new Refused(typed, 0, trouble.what, said, false, trouble.example), typed, 0);
    }

    @Override
    public String getMessage() {
        return trouble() + ". Example: " + example();
    }

    /** The trouble without an example: a clause without its full stop. */
    public Clause trouble() {
        return trouble.clause();
    }

    /** A text of the kind that was wanted, one that can be read. */
    public String example() {
        return trouble.example;
    }

    /** The whole text, as far as it is known. */
    public String text() {
        return text;
    }

    /** Index of the first character that does not fit, from 0; the length of the text if it ends too soon. */
    public int place() {
        return place;
    }

    /** The part of the text that was to be read by itself. */
    public String part() {
        return trouble.part;
    }

    /** The same place in the part. */
    public int placeInPart() {
        return trouble.place;
    }

    private static String characterAt(String text, int place) {
        return Character.toString(text.codePointAt(place));
    }

    /** At most {@value #LONGEST_QUOTE} characters of the text, on one line and without control characters. */
    private static String quote(String text) {
        return text.length() <= LONGEST_QUOTE ? printable(text) : printable(text.substring(0, LONGEST_QUOTE)) + "…";
    }

    private static String printable(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().map(c -> unprintable(c) ? '\uFFFD' : c).forEach(shown::appendCodePoint);
        return shown.toString();
    }

    private static boolean unprintable(int codePoint) {
        int type = Character.getType(codePoint);
        return Character.isISOControl(codePoint)
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }
}
