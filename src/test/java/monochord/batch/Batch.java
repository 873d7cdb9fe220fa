package monochord.batch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One run of a batch file in a {@link WindowsHouse}. What a percent sign stands for is filled in when a logical line is read,
 * so once for all lines of a block; loop variables when a command runs.
 *
 * <p>Source of the rules: Microsoft, Windows Commands, from memory, as {@link BatchParser} says.
 */
final class Batch {
    /** The batch file, or what {@code call} called, ends. */
    private static final class Exit extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** A jump; blocks are left, and what they had open is closed. */
    private static final class Goto extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final String label;

        Goto(String label) {
            this.label = label;
        }
    }

    private static final Pattern PERCENT = Pattern.compile("%%|%~dp0|%\\*|%(\\w+)%|%");
    private static final Pattern LOOP = Pattern.compile("%(~[a-z]*)?([a-zA-Z])");

    private final WindowsHouse house;
    private final List<String> lines;
    private final String arguments;
    private final Map<String, String> variables = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final Map<Character, String> loops = new HashMap<>();
    private final Map<Integer, WindowsHouse.Sink> handles = new HashMap<>();
    /** Numbers of lines that were run, and each {@code if} with what came of it: {@code 27+}, {@code 27-}. */
    private final Set<String> walked;

    private int line;
    private int errorLevel;

    Batch(WindowsHouse house, List<String> lines, String arguments, Set<String> walked) {
        this.house = house;
        this.lines = lines;
        this.arguments = arguments;
        this.walked = walked;
        variables.putAll(house.environment());
    }

    /** @return the exit status */
    int run(StringBuilder out, StringBuilder err) {
        handles.put(1, WindowsHouse.Sink.of(out));
        handles.put(2, WindowsHouse.Sink.of(err));
        runFrom(0);
        return errorLevel;
    }

    private void runFrom(int first) {
        int next = first;
        while (next < lines.size()) {
            line = next + 1;
            StringBuilder logical = new StringBuilder(expand(lines.get(next++)));
            String start = logical.toString().strip();
            if (start.isEmpty() || start.matches("(:|rem\\b).*")) {
                continue;
            }
            walked.add(Integer.toString(line));
            List<BatchNode> nodes = null;
            while (nodes == null) {
                try {
                    nodes = BatchParser.parse(logical.toString());
                } catch (BatchParser.Unfinished unfinished) {
                    logical.append('\n').append(expand(lines.get(next++)));
                }
            }
            try {
                nodes.forEach(this::run);
            } catch (Goto jump) {
                next = find(jump.label);
            } catch (Exit exit) {
                return;
            }
        }
    }

    private int find(String label) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).strip().equalsIgnoreCase(":" + label)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no label " + label);
    }

    // --- what percent signs stand for ----------------------------------------

    private String expand(String physical) {
        return PERCENT.matcher(physical)
                .replaceAll(found -> Matcher.quoteReplacement(meaning(found.group(), found.group(1))));
    }

    private String meaning(String sign, String name) {
        if (name != null) {
            return variable(name);
        }
        return switch (sign) {
            case "%%" -> "%";
            case "%~dp0" -> WindowsHouse.ROOT;
            case "%*" -> arguments;
            default -> "";
        };
    }

    private String variable(String name) {
        return switch (name.toUpperCase(Locale.ROOT)) {
            case "ERRORLEVEL" -> Integer.toString(errorLevel);
            case "RANDOM" -> Integer.toString(12345 + line);
            default -> variables.getOrDefault(name, "");
        };
    }

    private String loop(String text) {
        return LOOP.matcher(text).replaceAll(found -> {
            String value = loops.get(found.group(2).charAt(0));
            return Matcher.quoteReplacement(value == null ? found.group() : as(found.group(1), value));
        });
    }

    private String as(String how, String value) {
        return switch (how == null ? "" : how) {
            case "" -> value;
            case "~" -> WindowsHouse.unquoted(value);
            case "~z" -> house.size(value);
            case "~nx" -> WindowsHouse.name(value);
            default -> throw new IllegalArgumentException("unknown: " + how);
        };
    }

    // --- running ---------------------------------------------------------------

    /** @return what {@code &&} and {@code ||} ask for */
    private int run(BatchNode node) {
        if (node instanceof BatchNode.Command command) {
            return redirected(
                    command.redirects(), () -> command(loop(command.text()).strip()));
        } else if (node instanceof BatchNode.Group group) {
            return redirected(group.redirects(), () -> all(group.nodes()));
        } else if (node instanceof BatchNode.Joined joined) {
            return joined(joined);
        } else if (node instanceof BatchNode.If choice) {
            return choice(choice);
        }
        return loops((BatchNode.For) node);
    }

    private int all(List<BatchNode> nodes) {
        int last = 0;
        for (BatchNode node : nodes) {
            last = run(node);
        }
        return last;
    }

    private int redirected(List<BatchNode.Redirect> redirects, IntSupplier work) {
        Map<Integer, WindowsHouse.Sink> before = new HashMap<>(handles);
        List<WindowsHouse.Sink> opened = new ArrayList<>();
        try {
            for (BatchNode.Redirect redirect : redirects) {
                String target = loop(redirect.target());
                if (target.startsWith("&")) {
                    handles.put(redirect.handle(), handles.get(target.charAt(1) - '0'));
                } else if (redirect.handle() != 0) {
                    WindowsHouse.Sink sink = house.open(target, redirect.append());
                    if (sink == null) {
                        handles.get(2).write("The process cannot access the file.\n");
                        return 1;
                    }
                    opened.add(sink);
                    handles.put(redirect.handle(), sink);
                }
            }
            return work.getAsInt();
        } finally {
            handles.clear();
            handles.putAll(before);
            opened.forEach(WindowsHouse.Sink::close);
        }
    }

    private int joined(BatchNode.Joined joined) {
        if (joined.by().equals("|")) {
            return house.piped(captured(joined.left()), text -> captured(joined.right(), text), handles.get(1));
        }
        int left = run(joined.left());
        boolean goesOn = joined.by().equals("&") || joined.by().equals("&&") == (left == 0);
        if (!joined.by().equals("&")) {
            walked.add(line + joined.by() + (goesOn ? "+" : "-"));
        }
        return goesOn ? run(joined.right()) : left;
    }

    private String captured(BatchNode node) {
        StringBuilder out = new StringBuilder();
        WindowsHouse.Sink before = handles.put(1, WindowsHouse.Sink.of(out));
        run(node);
        handles.put(1, before);
        return out.toString();
    }

    private String captured(BatchNode node, String input) {
        house.input = input;
        String out = captured(node);
        house.input = "";
        return out;
    }

    private int choice(BatchNode.If choice) {
        boolean holds = holds(choice.condition()) != choice.isNot();
        walked.add(line
                + (holds ? "+" : "-")
                + String.join(" ", choice.condition()).replaceAll("\".*?\"|\\d+", ""));
        if (holds) {
            return run(choice.then());
        }
        return choice.otherwise() == null ? 0 : run(choice.otherwise());
    }

    private boolean holds(List<String> condition) {
        List<String> words = condition.stream().map(this::loop).toList();
        return switch (words.get(0)) {
            case "defined" -> variables.containsKey(words.get(1));
            case "exist" -> house.exists(words.get(1));
            case "errorlevel" -> errorLevel >= Integer.parseInt(words.get(1));
            default ->
                words.size() == 1
                        ? words.get(0).split("==", 2)[0].equals(words.get(0).split("==", 2)[1])
                        : Integer.parseInt(words.get(0)) < Integer.parseInt(words.get(2));
        };
    }

    // --- loops -------------------------------------------------------------------

    private int loops(BatchNode.For loop) {
        String set = loop(loop.set()).strip();
        List<List<String>> rounds = loop.options() == null
                ? house.named(set).stream().map(List::of).toList()
                : rows(loop.options().replace("\"", ""), set);
        int last = 0;
        for (List<String> round : rounds) {
            for (int i = 0; i < round.size(); i++) {
                loops.put((char) (loop.variable() + i), round.get(i));
            }
            last = run(loop.body());
        }
        for (char c = loop.variable(); c < loop.variable() + 2; c++) {
            loops.remove(c);
        }
        return last;
    }

    /** The words of each line that the options ask for; lines without the first of them are passed over. */
    private List<List<String>> rows(String options, String set) {
        String text;
        if (set.startsWith("'")) {
            text = captured(new BatchNode.Group(BatchParser.parse(set.substring(1, set.length() - 1)), List.of()));
        } else {
            String inner = WindowsHouse.unquoted(set);
            text = options.startsWith("usebackq") ? house.read(inner) : inner;
        }
        Matcher asked = Pattern.compile("tokens=([\\d,*]+)(?: delims=(.*))?").matcher(options);
        if (!asked.find()) {
            throw new IllegalArgumentException("unknown: " + options);
        }
        String delimiters = asked.group(2) == null ? " \t" : asked.group(2);
        return text.lines()
                .map(row -> WindowsHouse.tokens(row, asked.group(1), delimiters))
                .filter(words -> !words.isEmpty() && !words.get(0).isEmpty())
                .toList();
    }

    // --- commands ------------------------------------------------------------------

    private int command(String text) {
        String word = text.startsWith("\"") ? text.substring(0, text.indexOf('"', 1) + 1) : text.split("\\s", 2)[0];
        String rest = text.substring(word.length()).strip();
        switch (word.toLowerCase(Locale.ROOT)) {
            case "setlocal" -> {}
            case "echo" -> handles.get(1).write(rest.equals("off") ? "" : text.substring(5) + "\n");
            case "set" -> set(rest);
            case "goto" -> throw new Goto(rest);
            case "exit" -> {
                errorLevel = Integer.parseInt(rest.substring(rest.indexOf(' ') + 1));
                throw new Exit();
            }
            case "call" -> call(rest);
            case "start" -> house.start(rest.substring(rest.indexOf("mvn")), variables, handles.get(1));
            default -> {
                return errorLevel = house.run(WindowsHouse.unquoted(word), rest, handles);
            }
        }
        return word.equals("call") ? errorLevel : 0;
    }

    private void set(String rest) {
        boolean isSum = rest.startsWith("/a ");
        String[] pair = WindowsHouse.unquoted(isSum ? rest.substring(3) : rest).split("\\+?=", 2);
        String value = isSum
                ? Integer.toString(Integer.parseInt(variable(pair[0])) + Integer.parseInt(pair[1]))
                : loop(pair[1]);
        if (value.isEmpty()) {
            variables.remove(pair[0]);
        } else {
            variables.put(pair[0], value);
        }
    }

    private void call(String label) {
        errorLevel = 0;
        if (!label.isEmpty()) {
            int here = line;
            runFrom(find(label.substring(1)));
            line = here;
        }
    }
}
