package monochord.batch;

import java.util.ArrayList;
import java.util.List;
import monochord.batch.BatchNode.Redirect;

/**
 * Reads a logical line of a batch file: a physical one, or all lines of a block in parentheses. Quotation marks protect what
 * is in them, a caret what follows it; the body of {@code if} and {@code for} is all that is left of the line.
 *
 * <p>Source of the rules: Microsoft, Windows Commands ("cmd", "if", "for", "Using command redirection operators"), from
 * memory.
 */
final class BatchParser {
    /** The text ends within parentheses: the next line belongs to it. */
    static final class Unfinished extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private final String text;
    private int at;
    private int depth;

    private BatchParser(String text) {
        this.text = text;
    }

    static List<BatchNode> parse(String text) {
        BatchParser parser = new BatchParser(text);
        List<BatchNode> nodes = parser.lines();
        if (parser.at < text.length()) {
            throw new IllegalArgumentException("a parenthesis closes nothing: " + text);
        }
        return nodes;
    }

    private boolean sees(String word) {
        return text.regionMatches(true, at, word, 0, word.length());
    }

    private boolean seesWord(String word) {
        int end = at + word.length();
        return sees(word) && (end >= text.length() || " \t(".indexOf(text.charAt(end)) >= 0);
    }

    private boolean take(String word) {
        if (!sees(word)) {
            return false;
        }
        at += word.length();
        return true;
    }

    private void skip(String any) {
        while (at < text.length() && any.indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private List<BatchNode> lines() {
        List<BatchNode> nodes = new ArrayList<>();
        for (skip(" \t\n"); at < text.length() && !(depth > 0 && sees(")")); skip(" \t\n")) {
            nodes.add(line());
        }
        return nodes;
    }

    private BatchNode line() {
        BatchNode left = either();
        while (sees("&")) {
            at++;
            left = new BatchNode.Joined(left, "&", either());
        }
        return left;
    }

    private BatchNode either() {
        BatchNode left = piped();
        while (sees("&&") || sees("||")) {
            String by = text.substring(at, at + 2);
            at += 2;
            left = new BatchNode.Joined(left, by, piped());
        }
        return left;
    }

    private BatchNode piped() {
        BatchNode left = one();
        while (sees("|") && !sees("||")) {
            at++;
            left = new BatchNode.Joined(left, "|", one());
        }
        return left;
    }

    private BatchNode one() {
        List<Redirect> redirects = redirects();
        take("@");
        if (take("(")) {
            return group(redirects);
        } else if (seesWord("if")) {
            return condition();
        } else if (seesWord("for")) {
            return loop();
        }
        return command(redirects);
    }

    private BatchNode group(List<Redirect> redirects) {
        depth++;
        List<BatchNode> nodes = lines();
        depth--;
        if (!take(")")) {
            throw new Unfinished();
        }
        redirects.addAll(redirects());
        return new BatchNode.Group(nodes, redirects);
    }

    private String token() {
        skip(" \t");
        int from = at;
        boolean quoted = false;
        for (; at < text.length() && (quoted || " \t\n".indexOf(text.charAt(at)) < 0); at++) {
            quoted ^= text.charAt(at) == '"';
        }
        return text.substring(from, at);
    }

    private BatchNode condition() {
        token();
        skip(" \t");
        boolean isNot = seesWord("not") && !token().isEmpty();
        List<String> condition = new ArrayList<>(List.of(token()));
        if (!condition.get(0).contains("==")) {
            condition.add(token());
        }
        skip(" \t");
        if (text.substring(at).matches("(?s)\\d+ .*") && condition.get(1).equals("LSS")) {
            condition.add(token());
        }
        BatchNode then = line();
        skip(" \t");
        BatchNode otherwise = null;
        if (seesWord("else")) {
            token();
            otherwise = line();
        }
        return new BatchNode.If(isNot, condition, then, otherwise);
    }

    private BatchNode loop() {
        token();
        skip(" \t");
        String options = seesWord("/f") && !token().isEmpty() ? token() : null;
        char variable = token().charAt(1);
        if (!token().equals("in")) {
            throw new IllegalArgumentException("for without in: " + text);
        }
        skip(" \t");
        take("(");
        String set = upTo(")");
        take(")");
        if (!token().equals("do")) {
            throw new IllegalArgumentException("for without do: " + text);
        }
        return new BatchNode.For(options, variable, set, line());
    }

    /** As far as one of these that is not protected; carets are taken away. */
    private String upTo(String ends) {
        StringBuilder read = new StringBuilder();
        boolean quoted = false;
        for (; at < text.length(); at++) {
            char c = text.charAt(at);
            if (!quoted && ends.indexOf(c) >= 0) {
                break;
            } else if (c == '^' && !quoted) {
                at++;
                read.append(text.charAt(at));
            } else {
                quoted ^= c == '"';
                read.append(c);
            }
        }
        return read.toString();
    }

    private BatchNode command(List<Redirect> redirects) {
        StringBuilder command = new StringBuilder();
        String ends = depth > 0 ? "&|<>\n)" : "&|<>\n";
        while (true) {
            command.append(upTo(ends));
            if (at >= text.length() || "<>".indexOf(text.charAt(at)) < 0) {
                return new BatchNode.Command(command.toString(), redirects);
            }
            int last = command.length() - 1;
            if (command.toString().matches("(?s).*\\s\\d")) { // the digit before the sign is a handle
                command.deleteCharAt(last);
                at--;
            }
            redirects.addAll(redirects());
        }
    }

    private List<Redirect> redirects() {
        List<Redirect> redirects = new ArrayList<>();
        for (skip(" \t"); text.substring(at).matches("(?s)\\d?[<>].*"); skip(" \t")) {
            int handle = text.charAt(at) == '<' ? 0 : 1;
            if (Character.isDigit(text.charAt(at))) {
                handle = text.charAt(at++) - '0';
            }
            at++;
            boolean append = take(">");
            redirects.add(new Redirect(handle, append, target()));
        }
        return redirects;
    }

    private String target() {
        if (take("&")) {
            return "&" + text.charAt(at++);
        }
        skip(" \t");
        return sees("\"") ? quoted() : upTo(" \t\n&|)");
    }

    private String quoted() {
        int end = text.indexOf('"', at + 1);
        String target = text.substring(at + 1, end);
        at = end + 1;
        return target;
    }
}
