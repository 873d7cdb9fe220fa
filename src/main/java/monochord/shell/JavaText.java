package monochord.shell;

import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.Unreadable;

/** Tells from the look of a line, without a compiler, whether it may be Java. */
final class JavaText {
    /** What neither a chord nor a word of a sentence has: a semicolon, a brace, an assignment, a sum of numbers. */
    private static final Pattern SIGNS =
            Pattern.compile("[;{}]|\\w\\s*[-+*/]?=|==|^\\(?[0-9.]+\\s*[-+*/%]\\s*\\(?[0-9.]+");

    private static final Pattern DECLARED =
            Pattern.compile("^(?:(?:var|int|long|double|float|boolean|char|String) +[A-Za-z_]\\w*"
                    + "|import +(?:static +)?[\\w.]+\\.[\\w*]+|new +\\w+ *[<(\\[]"
                    + "|(?:(?:public|final|abstract|static|sealed) +)*(?:class|interface|enum|record) +[A-Z]\\w*"
                    + "|(?:for|while|if|switch|synchronized) *\\(|(?:void|\\w+(?:<[\\w<>, ]*>)?) +\\w+\\()");

    private static final Pattern CALL = Pattern.compile("([\\w$]+)\\(");
    private static final Pattern MEMBER = Pattern.compile("^([A-Za-z_]\\w+)\\.[A-Za-z]\\w+");
    private static final Pattern TEXT = Pattern.compile("^\".*\"\\s*[.+]", Pattern.DOTALL);
    private static final Pattern FIRST_NAME = Pattern.compile("^[A-Za-z_]\\w*");
    private static final Pattern ASSIGNED = Pattern.compile("^\\s*=(?!=)");
    private static final Pattern NAMED = Pattern.compile("^\\s+[A-Za-z_]\\w*\\s*=(?!=)");

    /** A type, though its first word is a verb's too: no sentence has a brace. */
    private static final Pattern TYPE = Pattern.compile("^class +[A-Za-z_]\\w*[^{}]*\\{");

    private JavaText() {}

    /** @param holds whether the cell has something of a name */
    static boolean mayBe(String text, Predicate<String> holds) {
        return SIGNS.matcher(text).find()
                || DECLARED.matcher(text).find()
                || TEXT.matcher(text).find()
                || names(CALL, text)
                || names(MEMBER, text)
                || FIRST_NAME.matcher(text).results().anyMatch(name -> holds.test(name.group()));
    }

    /** Whether the pattern finds a name that is no music: {@code C7(b9)} calls nothing. */
    private static boolean names(Pattern pattern, String text) {
        Matcher found = pattern.matcher(text);
        while (found.find()) {
            if (!isMusic(found.group(1))) {
                return true;
            }
        }
        return false;
    }

    /** Whether the first word, or what stands in it before a parenthesis, is a chord or a numeral. */
    static boolean beginsAsMusic(String text) {
        String word = LineReading.firstWord(text);
        int parenthesis = word.indexOf('(');
        return isMusic(parenthesis > 0 ? word.substring(0, parenthesis) : word);
    }

    private static boolean isMusic(String word) {
        return reads(word, Chord::parse) || reads(word, Numeral::parse);
    }

    private static boolean reads(String word, Function<String, ?> reader) {
        try {
            reader.apply(word);
            return true;
        } catch (Unreadable unreadable) {
            return false;
        }
    }

    /**
     * Whether a line that begins with the word of a verb gives a value to a variable instead: one of that name, or of the
     * class that is called like it, as in {@code Key home = …}; or whether it begins a type.
     */
    static boolean declares(String text, String word) {
        return TYPE.matcher(text).find() || assigns(text, word);
    }

    private static boolean assigns(String text, String word) {
        if (text.indexOf('=') < 0) {
            return false;
        }
        String behind = text.substring(word.length());
        return ASSIGNED.matcher(behind).find()
                || Character.isUpperCase(word.charAt(0))
                        && NAMED.matcher(behind).find();
    }
}
