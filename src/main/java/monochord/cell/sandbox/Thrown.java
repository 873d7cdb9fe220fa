package monochord.cell.sandbox;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.UnresolvedReferenceException;
import monochord.harmony.voicing.Unvoiced;
import monochord.theory.note.Unreadable;

/** What a snippet throws, in words. */
final class Thrown {
    private static final Pattern BOUNDS =
            Pattern.compile("Index:? (-?\\d+)(?: out of bounds for length |,? Size: )(\\d+)");

    private static final Pattern NOTHING = Pattern.compile("(\\w+)\\([^()]*\\)\" because \"([^\"<]+)\"");

    private Thrown() {}

    /** @param offset where the snippet begins in the text of the cell */
    static SnippetFailure of(JShellException exception, JShell shell, Snippet snippet, String text, int offset) {
        int line = line(exception, snippet, text, offset);
        if (exception instanceof UnresolvedReferenceException unresolved) {
            String missing = Rejected.listed(
                    shell.unresolvedDependencies(unresolved.getSnippet()).toList());
            return new SnippetFailure(
                    unresolved.getSnippet().name() + "() needs what there is not yet: no " + missing + ".", -1, line);
        }
        if (asksForEnvironment(exception)) {
            return new SnippetFailure("A cell sees nothing of what is set around it.", -1, line);
        }
        EvalException thrown = (EvalException) exception;
        String said = thrown.getMessage() == null ? "" : thrown.getMessage();
        return new SnippetFailure(inWords(thrown.getExceptionClassName(), said), -1, line);
    }

    /** Newer JDKs read it with the class that starts programs. */
    private static boolean asksForEnvironment(JShellException exception) {
        return Arrays.stream(exception.getStackTrace())
                .anyMatch(frame -> frame.getClassName().equals("java.lang.System")
                        && frame.getMethodName().equals("getenv"));
    }

    private static String inWords(String name, String said) {
        if (name.equals(Unreadable.class.getName()) || name.equals(Unvoiced.class.getName())) {
            return said;
        } else if (said.contains("java.lang.ProcessImpl") || said.contains("process launch mechanism")) {
            return "A cell starts no other programs.";
        }
        Matcher bounds = BOUNDS.matcher(said);
        if (bounds.find()) {
            return "There is no element " + bounds.group(1) + ": there are " + bounds.group(2) + ", counted from 0.";
        }
        return switch (name) {
            case "java.lang.StackOverflowError" -> "Something calls itself without end.";
            case "java.lang.NullPointerException" -> askedOfNothing(said.replaceAll(ValueText.MADE_HERE, ""));
            case "java.lang.IllegalArgumentException", "java.lang.IllegalStateException" -> sentence(name, said);
            case "java.lang.ArithmeticException" -> said.equals("/ by zero") ? "Nothing can be divided by 0." : said;
            default -> Rejected.shortly(name) + (said.isEmpty() ? "." : ": " + said);
        };
    }

    /** Java says which call failed, and mostly which name it was that had no value. */
    private static String askedOfNothing(String said) {
        Matcher call = NOTHING.matcher(said);
        return call.find()
                ? call.group(2) + " is null, which is nothing, and cannot be asked for " + call.group(1) + "()."
                : "Something is asked of null, which is nothing.";
    }

    /** Such an exception mostly says in a sentence what is not allowed. */
    private static String sentence(String name, String said) {
        if (said.isEmpty()) {
            return Rejected.shortly(name) + ".";
        }
        String end = said.matches("(?s).*[.!?)]") ? "" : ".";
        return Character.toUpperCase(said.charAt(0)) + said.substring(1) + end;
    }

    /** The line of the cell in which it happened, or 0 where the cell has one only. */
    private static int line(JShellException exception, Snippet snippet, String text, int offset) {
        if (text.strip().indexOf('\n') < 0) {
            return 0;
        }
        int before =
                (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
        return Arrays.stream(exception.getStackTrace())
                .filter(frame -> ("#" + snippet.id()).equals(frame.getFileName()))
                .mapToInt(frame -> before + frame.getLineNumber())
                .findFirst()
                .orElse(0);
    }
}
