package monochord.cell.sandbox;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.VarSnippet;
import monochord.text.Nearest;

/**
 * A snippet that the compiler does not take: what it says, in words that somebody follows who reads music better than
 * Java.
 */
record Rejected(Diag diag, String text, int offset, JShell shell) {
    private static final String ERROR = "compiler.err.";
    private static final Pattern LONE_ELSE = Pattern.compile("else\\b");
    private static final Pattern SYMBOL = Pattern.compile("symbol:\\s+(\\w+) ([\\w$]+)");
    private static final Pattern OF_TYPE =
            Pattern.compile("location:\\s+(?:class|interface|variable \\S+ of type) (.+)");
    private static final Pattern PACKAGE = Pattern.compile("\\b(?:\\w+\\.)+(?=[A-Z$])");
    private static final List<String> WORDS = List.of(
            "key",
            "chord",
            "scale",
            "notes",
            "pitches",
            "numeral",
            "progression",
            "voice",
            "borrowed",
            "show",
            "play",
            "String",
            "System",
            "List",
            "Chord",
            "Key",
            "Scale",
            "Progression",
            "Numeral",
            "Pitch",
            "Interval");

    /** Where music may have lost its quotation marks. */
    private static final Pattern BARE = Pattern.compile("cant\\.resolve.*|expected.*|unclosed\\.char\\.lit|not\\.stmt");

    /** What other languages print with. */
    private static final List<String> PRINTING = List.of("print", "println", "printf", "echo", "puts");

    SnippetFailure trouble() {
        int place = (int) Math.min(text.length(), offset + Math.max(0, diag.getPosition()));
        String code = diag.getCode().startsWith(ERROR) ? diag.getCode().substring(ERROR.length()) : diag.getCode();
        Quoting bare = BARE.matcher(code).matches() ? Quoting.around(text, place) : null;
        return bare != null ? bare.trouble() : new SnippetFailure(inWords(code, place), place, 0);
    }

    private String inWords(String code, int place) {
        String said = shortly(diag.getMessage(Locale.ENGLISH));
        if (code.startsWith("cant.resolve")) {
            return unknown(said);
        } else if (code.startsWith("expected") && Brackets.isSurplus(text, place)) {
            return "This " + text.charAt(place) + " closes nothing.";
        }
        // JShell reads a lone else as the end of something that began before it, and misses the rest at its end.
        boolean isElse = place >= 0
                && LONE_ELSE.matcher(text).region(place, text.length()).lookingAt();
        return new CompilerSays(isElse ? "else.without.if" : code, said).inWords();
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
        String asked = what.equals(name) && !where.equals(" here") ? ", but perhaps " + name + "()." : ".";
        return "There is no " + what + where + asked + (where.equals(" here") ? near(name) : "");
    }

    /** A name of a letter or two is near to every other. */
    private String near(String name) {
        if (PRINTING.contains(name)) {
            return " System.out.println(…) prints.";
        }
        List<String> names = new ArrayList<>(WORDS);
        shell.variables().map(VarSnippet::name).forEach(names::add);
        shell.methods().map(MethodSnippet::name).forEach(names::add);
        Optional<String> near = name.length() < 3 ? Optional.empty() : Nearest.to(name, names);
        return near.map(word -> " Did you mean " + word + "?").orElse("");
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
