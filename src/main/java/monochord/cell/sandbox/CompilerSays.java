package monochord.cell.sandbox;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the compiler says, in words that somebody follows who reads music better than Java.
 *
 * @param code the compiler's name for it, without {@code compiler.err.}
 * @param said its message in English, classes without their packages
 */
record CompilerSays(String code, String said) {
    private static final Map<String, String> PLAIN = Map.ofEntries(
            Map.entry("illegal.char", "Java has no use for this sign here."),
            Map.entry("unclosed.str.lit", "The text that begins here is not closed with \"."),
            Map.entry("unclosed.char.lit", "Text stands in double quotation marks: \"so\"."),
            Map.entry("empty.char.lit", "Text stands in double quotation marks: \"so\"."),
            Map.entry("cant.deref", "This is a number or a truth value, and has nothing behind a point."),
            Map.entry("premature.eof", "Something is missing at the end."),
            Map.entry("missing.ret.stmt", "The method ends here and gives nothing back: a return is missing."),
            Map.entry("else.without.if", "This else has no if before it: write both in one line, if (…) …; else …;"),
            Map.entry("int.number.too.large", "This number is too large for an int."),
            Map.entry("unreachable.stmt", "This can never be reached."),
            Map.entry("type.found.req", "A class is wanted here: for int that is Integer."),
            Map.entry("break.outside.switch.loop", "There is no loop here that could be left."),
            Map.entry("cont.outside.loop", "There is no loop here that could go on."),
            Map.entry("array.req.but.found", "Only an array has [ ] behind it; of a list, say get(0)."),
            Map.entry("try.without.catch.finally.or.resource.decls", "This try has no catch behind it."),
            Map.entry(
                    "local.variables.declared.in.lambda",
                    "A function can only use what never changes after it is set."));

    private static final List<String> UNEXPECTED =
            List.of("not.stmt", "illegal.start.of.expr", "illegal.start.of.type", "illegal.start.of.stmt", "orphaned");

    private static final Map<String, String> WORDS = Map.of(
            "Chord", "chord", "Key", "key", "Scale", "scale", "Progression", "progression", "Numeral", "Numeral.parse");

    private static final Pattern CONVERTED = Pattern.compile("incompatible types: (.+) cannot be converted to (.+)");
    private static final Pattern LOSSY = Pattern.compile("possible lossy conversion from (\\w+) to (\\w+)");
    private static final Pattern REQUIRED = Pattern.compile("required:\\s+(.+)\\s+found:\\s+(.+)");
    private static final Pattern FORM = Pattern.compile("(?m)^\\s*(?:method|constructor) \\S*?(\\w+)\\(([^()]*)\\)");
    private static final Pattern NAME =
            Pattern.compile("(?:found for|(?:method|constructor)(?! found)) (?:\\w+\\.)*(\\w+)");
    private static final Pattern GIVEN = Pattern.compile("found for [\\w.]+\\(([^()]*)\\)");
    private static final Pattern EXPECTED = Pattern.compile("'(.)'");
    private static final Pattern SIDES = Pattern.compile("first type:\\s+(.+)\\s+second type:\\s+(.+)");
    private static final Pattern LAST_QUOTED = Pattern.compile("'([^']*)'$", Pattern.MULTILINE);
    private static final Pattern FIRST_NAME = Pattern.compile("(?:variable|method|class) ([\\w$]+)");
    private static final Pattern OWN = Pattern.compile("^(\\w+) has private access in (\\w+)");
    private static final Pattern THROWN = Pattern.compile("unreported exception (\\w+)");

    String inWords() {
        if (PLAIN.containsKey(code)) {
            return PLAIN.get(code);
        } else if (UNEXPECTED.contains(code)) {
            return "Java does not expect this here.";
        } else if (code.startsWith("cant.apply")) {
            return notFor();
        } else if (code.startsWith("expected")) {
            return missing();
        }
        return switch (code) {
            case "prob.found.req" -> unfit();
            case "operator.cant.be.applied.1" -> unjoined();
            case "already.defined" -> "Something here is called " + name(FIRST_NAME) + " already.";
            case "cant.infer.local.var.type" -> "A var needs a value that says what it is.";
            case "var.might.not.have.been.initialized" -> name(FIRST_NAME) + " has no value yet.";
            case "doesnt.exist" -> "There is no " + behind("package ") + " here.";
            case "report.access" -> ownOfItsClass();
            case "non-static.cant.be.ref" -> name(FIRST_NAME) + " is asked of a value, not of its class.";
            case "cant.ref.non.effectively.final.var" -> PLAIN.get("local.variables.declared.in.lambda");
            case "foreach.not.applicable.to.type" -> "This is no list, and cannot be gone through one by one.";
            case "incomparable.types" -> "These two are of different kinds and never equal.";
            case "unreported.exception.need.to.catch.or.throw" ->
                "This may fail with " + name(THROWN) + ": try { … } catch (" + name(THROWN) + " e) { … } meets it.";
            case "unexpected.type" -> "Only a variable can be given a value.";
            default -> other();
        };
    }

    private String other() {
        String first = said.lines().findFirst().orElse("no");
        return first.endsWith(" expected") ? missing() : "Java says: " + first + ".";
    }

    /** Most of what a value of ours holds can be asked for, too. */
    private String ownOfItsClass() {
        Matcher own = OWN.matcher(said);
        return own.find()
                ? own.group(1) + " is what " + Rejected.withArticle(own.group(2)) + " keeps to itself; perhaps "
                        + own.group(1) + "() tells it."
                : "This belongs to its class and cannot be used here.";
    }

    private String name(Pattern pattern) {
        Matcher found = pattern.matcher(said);
        return found.find() ? found.group(1) : "this";
    }

    private String behind(String word) {
        String line = said.lines().findFirst().orElse("");
        return line.startsWith(word) ? line.substring(word.length()).replaceAll(" does not exist$", "") : line;
    }

    private String missing() {
        List<String> signs =
                EXPECTED.matcher(said).results().map(sign -> sign.group(1)).toList();
        if (signs.isEmpty()) {
            return said.startsWith("<identifier>") ? "A name is missing here." : "Java does not expect this here.";
        }
        return switch (signs.get(0)) {
            case ";" -> "A semicolon ; is missing here.";
            case ")" -> "A ) or a comma is missing here.";
            default -> "A " + String.join(" or a ", signs) + " is missing here.";
        };
    }

    private String unfit() {
        Matcher converted = CONVERTED.matcher(said);
        Matcher lossy = LOSSY.matcher(said);
        if (converted.find()) {
            return wanted(converted.group(1), converted.group(2));
        } else if (lossy.find()) {
            return wanted(lossy.group(1), lossy.group(2)) + " Say (" + lossy.group(2) + ") before it to cut it.";
        } else if (said.contains("unexpected return value")) {
            return "This gives nothing back, so nothing stands behind return.";
        }
        return "This is of another kind than what is wanted: " + behind("incompatible types: ") + ".";
    }

    /** Text is wanted nowhere where music is, and a word makes the one of the other. */
    private static String wanted(String given, String wanted) {
        String said = "This is " + Rejected.withArticle(given) + ", and " + Rejected.withArticle(wanted) + " is wanted";
        return given.equals("String") && WORDS.containsKey(wanted)
                ? said + ": " + WORDS.get(wanted) + "(\"…\") makes one of it."
                : said + ".";
    }

    private String unjoined() {
        Matcher sides = SIDES.matcher(said);
        return sides.find()
                ? Rejected.withArticle(sides.group(1)).replaceFirst("^a", "A") + " and "
                        + Rejected.withArticle(sides.group(2)) + " cannot be joined by " + name(LAST_QUOTED) + "."
                : "Java says: " + behind("") + ".";
    }

    /** What a method takes, in each of its forms, and what it is given. */
    private String notFor() {
        String name = name(NAME);
        Matcher required = REQUIRED.matcher(said);
        if (required.find()) {
            return name + "() takes " + arguments(required.group(1)) + ", and is given " + arguments(required.group(2))
                    + ".";
        }
        String forms = FORM.matcher(said)
                .results()
                .filter(form -> form.group(1).equals(name))
                .map(form -> arguments(form.group(2)))
                .distinct()
                .sorted()
                .collect(Collectors.joining(", or "));
        Matcher given = GIVEN.matcher(said);
        return forms.isEmpty() || !given.find()
                ? name + "() does not take what stands in its parentheses."
                : name + "() takes " + forms + "; it is given " + arguments(given.group(1)) + ".";
    }

    private static String arguments(String types) {
        return types.isBlank() || types.startsWith("no arguments")
                ? "nothing"
                : String.join(" and ", types.strip().split(","));
    }
}
