package monochord.shell.cell.far;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.VarSnippet;
import monochord.lesson.Nearest;

/**
 * A snippet that the compiler does not take: what it says, in words that somebody follows who reads music better than
 * Java.
 */
record Rejected(Diag diag, String text, int offset, JShell shell) {
    private static final Pattern SYMBOL = Pattern.compile("symbol:\\s+(\\w+) ([\\w$]+)");
    private static final Pattern OF_TYPE =
            Pattern.compile("location:\\s+(?:class|interface|variable \\S+ of type) (.+)");
    private static final Pattern CONVERTED = Pattern.compile("incompatible types: (.+) cannot be converted to (.+)");
    private static final Pattern REQUIRED = Pattern.compile("required:\\s+(.+)\\s+found:\\s+(.+)");
    private static final Pattern NO_METHOD = Pattern.compile("(?:method|for) ([\\w$]+)");
    private static final Pattern PACKAGE = Pattern.compile("\\b(?:\\w+\\.)+(?=[A-Z$])");
    private static final List<String> WORDS = List.of(
            "key", "chord", "scale", "notes", "pitches", "numeral", "progression", "voice", "borrowed", "show", "play");

    Trouble trouble() {
        int place = (int) Math.min(text.length(), offset + Math.max(0, diag.getPosition()));
        return new Trouble(inWords(), place, 0);
    }

    private String inWords() {
        String said = shortly(diag.getMessage(Locale.ENGLISH));
        String code = diag.getCode();
        if (code.startsWith("compiler.err.cant.resolve")) {
            return unknown(said);
        } else if (code.equals("compiler.err.prob.found.req")) {
            return unfit(said);
        } else if (code.startsWith("compiler.err.cant.apply")) {
            return notFor(said);
        }
        return switch (code) {
            case "compiler.err.illegal.char" -> "Java has no use for this sign here.";
            case "compiler.err.unclosed.str.lit" -> "The text that begins here is not closed with \".";
            case "compiler.err.cant.deref" -> "This is a number or a truth value, and has nothing behind a point.";
            case "compiler.err.not.stmt", "compiler.err.illegal.start.of.expr" -> "Java does not expect this here.";
            case "compiler.err.premature.eof" -> "Something is missing at the end.";
            case "compiler.err.doesnt.exist" -> "There is no " + firstWord(said, "package ") + " here.";
            default -> "Java says: " + said.lines().findFirst().orElse("no") + ".";
        };
    }

    private String unknown(String said) {
        Matcher symbol = SYMBOL.matcher(said);
        if (!symbol.find()) {
            return "Java says: " + said.lines().findFirst().orElse("") + ".";
        }
        String name = symbol.group(2);
        Matcher place = OF_TYPE.matcher(said);
        String where = place.find() && !place.group(1).startsWith("$") ? " in " + withArticle(place.group(1)) : " here";
        String what = symbol.group(1).equals("method") ? name + "()" : name;
        return "There is no " + what + where + "." + (where.equals(" here") ? near(name) : "");
    }

    private String near(String name) {
        List<String> names = new java.util.ArrayList<>(WORDS);
        shell.variables().map(VarSnippet::name).forEach(names::add);
        shell.methods().map(MethodSnippet::name).forEach(names::add);
        Optional<String> near = Nearest.to(name, names);
        return near.map(word -> " Did you mean " + word + "?").orElse("");
    }

    private static String unfit(String said) {
        Matcher converted = CONVERTED.matcher(said);
        return converted.find()
                ? "This is " + withArticle(converted.group(1)) + ", and " + withArticle(converted.group(2))
                        + " is wanted."
                : "This is of another kind than what is wanted: " + firstWord(said, "incompatible types: ") + ".";
    }

    private static String notFor(String said) {
        Matcher method = NO_METHOD.matcher(said);
        String name = method.find() ? method.group(1) + "()" : "This";
        Matcher required = REQUIRED.matcher(said);
        return required.find()
                ? name + " takes " + arguments(required.group(1)) + ", and is given " + arguments(required.group(2))
                        + "."
                : name + " does not take what stands in its parentheses.";
    }

    private static String arguments(String types) {
        return types.startsWith("no arguments")
                ? "nothing"
                : String.join(" and ", types.strip().split(","));
    }

    private static String firstWord(String said, String behind) {
        String line = said.lines().findFirst().orElse("");
        return line.startsWith(behind) ? line.substring(behind.length()).replaceAll(" does not exist$", "") : line;
    }

    static String withArticle(String type) {
        return ("AEIOUaeiou".indexOf(type.charAt(0)) >= 0 ? "an " : "a ") + type;
    }

    /** Class names without their packages. */
    static String shortly(String names) {
        return PACKAGE.matcher(names).replaceAll("");
    }

    static String listed(List<String> names) {
        return String.join(" and no ", names);
    }
}
