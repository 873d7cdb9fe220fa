package monochord.theory;

/**
 * Says that a text cannot be read as music: which text, where it goes wrong, and what would have worked.
 *
 * <p>It carries no stack trace. A text that cannot be read is an everyday event here (one reading is tried after
 * another), and the place that matters is the one in the text.
 */
public final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_QUOTE = 40;

    private final transient Trouble trouble;
    private final String example;
    private final String text;
    private final int place;

    /**
     * What goes wrong, put into words only for whoever asks: most refusals are followed by another reading.
     *
     * @param expected what could have stood at the place, or null
     * @param why what is wrong where nothing else was expected, or null
     */
    private record Trouble(String text, int place, String what, String expected, String why) {
        String inWords() {
            return "\"" + quote(text) + "\" is not " + what + ": " + (why == null ? expectation() : why);
        }

        private String expectation() {
            String found = place >= text.length() ? "the end" : "'" + printable(characterAt(text, place)) + "'";
            return "expected " + expected + " at character " + (place + 1) + ", found " + found;
        }
    }

    private Unreadable(Trouble trouble, String example, String text, int place) {
        super(null, null, false, false);
        this.trouble = trouble;
        this.example = example;
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
        return new Unreadable(new Trouble(text, place, what, expected, null), example, text, place);
    }

    /**
     * A text whose form is right but whose meaning is not, such as a chord with two thirds.
     *
     * @param why a clause that follows a colon, without its full stop
     */
    public static Unreadable because(String text, int place, String what, String why, String example) {
        return new Unreadable(new Trouble(text, place, what, null, why), example, text, place);
    }

    /** The same trouble seen as part of a longer text, in which the unreadable part starts at {@code offset}. */
    public Unreadable within(String whole, int offset) {
        return new Unreadable(trouble, example, whole, offset + place);
    }

    @Override
    public String getMessage() {
        return trouble() + ". Example: " + example;
    }

    /** The message without its example: a clause without its full stop. */
    public String trouble() {
        return trouble.inWords();
    }

    /** A text of the kind that was wanted, one that can be read. */
    public String example() {
        return example;
    }

    public String text() {
        return text;
    }

    /** Index of the first character that does not fit, from 0; the length of the text if it ends too soon. */
    public int place() {
        return place;
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
