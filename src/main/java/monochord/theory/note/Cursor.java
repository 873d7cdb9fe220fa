package monochord.theory.note;

import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;

/** Reads a text from left to right, knows what the text is meant to be, and says where it stops making sense. */
public final class Cursor {
    static final int MOST_ACCIDENTALS = 13;

    private final String text;
    private final String what;
    private final String example;
    private int place;

    public Cursor(String text, String what, String example) {
        this.text = text;
        this.what = what;
        this.example = example;
    }

    public int place() {
        return place;
    }

    public void back(int earlier) {
        place = earlier;
    }

    public boolean atEnd() {
        return place >= text.length();
    }

    /** The next character, or 0 at the end. */
    public char peek() {
        return atEnd() ? 0 : text.charAt(place);
    }

    public char next() {
        return text.charAt(place++);
    }

    public boolean take(char wanted) {
        boolean there = peek() == wanted && !atEnd();
        place += there ? 1 : 0;
        return there;
    }

    public boolean take(String wanted) {
        boolean there = text.startsWith(wanted, place);
        place += there ? wanted.length() : 0;
        return there;
    }

    public boolean takeAny(String... wanted) {
        for (String one : wanted) {
            if (take(one)) {
                return true;
            }
        }
        return false;
    }

    /** Takes one of these words only if a figure follows it, for {@code maj9} is a suffix and {@code maj65} is not. */
    public boolean takeAnyBeforeFigure(String... wanted) {
        int before = place;
        if (takeAny(wanted)
                && (ahead("65")
                        || ahead("64")
                        || ahead("6/")
                        || ahead("43")
                        || ahead("4/")
                        || ahead("42")
                        || ahead("2"))) {
            return true;
        }
        place = before;
        return false;
    }

    /** Whether a slash and a number follow, with accidentals between them perhaps. */
    public boolean aheadDegreeAfterSlash() {
        int at = place + 1;
        while (at < text.length() && "b#♭♯x𝄪𝄫".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return peek() == '/' && isDigitAt(at);
    }

    public boolean ahead(String wanted) {
        return text.startsWith(wanted, place);
    }

    public boolean aheadDigit() {
        return isDigitAt(place);
    }

    public boolean aheadThenDigit(String wanted) {
        return ahead(wanted) && isDigitAt(place + wanted.length());
    }

    /** Whether this text follows, and behind it one of these characters. */
    public boolean aheadThenAny(String wanted, String characters) {
        int behind = place + wanted.length();
        return ahead(wanted) && behind < text.length() && characters.indexOf(text.charAt(behind)) >= 0;
    }

    private boolean isDigitAt(int index) {
        return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }

    /** Whether the character just read is this one. */
    public boolean before(char wanted) {
        return place > 0 && text.charAt(place - 1) == wanted;
    }

    public String upTo(int end) {
        return text.substring(place, end);
    }

    String rest() {
        return text.substring(place);
    }

    public String takeRest() {
        String rest = rest();
        place = text.length();
        return rest;
    }

    public String takeWhile(IntPredicate wanted) {
        int start = place;
        while (!atEnd() && wanted.test(text.charAt(place))) {
            place++;
        }
        return text.substring(start, place);
    }

    /** Takes characters until this holds, or to the end. */
    public String takeUntil(BooleanSupplier there) {
        int start = place;
        while (!atEnd() && !there.getAsBoolean()) {
            place++;
        }
        return text.substring(start, place);
    }

    /**
     * The next word, up to a space, a comma or a bar line; a bar line is a word of its own. What parentheses hold belongs to the
     * word, whatever it is. Empty at the end.
     */
    public String nextWord() {
        takeWhile(c -> Character.isWhitespace(c) || c == ',');
        if (take('|')) {
            return "|";
        }
        int start = place;
        int depth = 0;
        while (!atEnd() && (depth > 0 || !separatesWords(peek()))) {
            char c = next();
            depth += c == '(' ? 1 : c == ')' && depth > 0 ? -1 : 0;
        }
        return text.substring(start, place);
    }

    private static boolean separatesWords(char c) {
        return Character.isWhitespace(c) || c == ',' || c == '|';
    }

    /** A whole number of one to {@code digits} digits. */
    public int number(int digits, String expected) {
        int start = place;
        int value = 0;
        while (place < start + digits && peek() >= '0' && peek() <= '9') {
            value = 10 * value + (next() - '0');
        }
        if (place == start) {
            throw unexpected(expected);
        }
        return value;
    }

    /** Any run of flats or any run of sharps, as half steps; 0 where none stands. Flats and sharps do not mix. */
    public int accidentals() {
        int sum = 0;
        int before = place;
        for (int one = accidental(); one != 0; one = accidental()) {
            if (sum * one < 0 || Math.abs(sum + one) > MOST_ACCIDENTALS) {
                place = before;
                throw unexpected(sum * one < 0 ? "one kind of accidental" : "fewer accidentals");
            }
            sum += one;
            before = place;
        }
        return sum;
    }

    private int accidental() {
        switch (peek()) {
            case 'b', '♭':
                place++;
                return -1;
            case '#', '♯':
                place++;
                return 1;
            case 'x':
                place++;
                return 2;
            default:
                return take("𝄪") ? 2 : take("𝄫") ? -2 : 0;
        }
    }

    public void end() {
        end("");
    }

    /** @param orElse what could have gone on here, or nothing if the text had to end */
    public void end(String orElse) {
        if (!atEnd()) {
            throw orElse.isEmpty() ? unexpected("the end") : unexpected(Clause.of("{0} or the end", orElse));
        }
    }

    public Unreadable unexpected(String expected) {
        return unexpected(place, expected);
    }

    /** What is thrown where something else was expected at an earlier place. */
    public Unreadable unexpected(int at, String expected) {
        return Unreadable.at(text, at, what, expected, example);
    }

    public Unreadable unexpected(Clause expected) {
        return unexpected(place, expected);
    }

    public Unreadable unexpected(int at, Clause expected) {
        return Unreadable.at(text, at, what, expected, example);
    }

    public Unreadable because(String why) {
        return because(place, why);
    }

    /** What is thrown where the text is refused for a reason that lies at an earlier place. */
    public Unreadable because(int at, String why) {
        return Unreadable.because(text, at, what, why, example);
    }

    public Unreadable because(Clause why) {
        return because(place, why);
    }

    public Unreadable because(int at, Clause why) {
        return Unreadable.because(text, at, what, why, example);
    }
}
