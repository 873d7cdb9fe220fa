package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.SwitchExpressionTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Reads every sentence out of the sources: the templates of phrases, which are the catalogue that another language
 * translates, and the English that is still put together from pieces.
 */
class CatalogueTest {
    /** How many English texts outside of phrases each file still holds. None may grow. */
    private static final Path NOT_YET_PHRASES =
            Path.of("src", "test", "resources", "monochord", "english-not-yet-phrases.tsv");

    private static final String MOVES = "names of moves, typed as they stand, and patterns of numerals";

    /** What stays as it is, and why. */
    private static final Map<String, String> ENGLISH_FOR_GOOD = Map.ofEntries(
            Map.entry(
                    "monochord/shell/Main.java",
                    "said where a part of the program is damaged, by a class that may load no other"),
            Map.entry("monochord/record/Schema.java", "SQL"),
            Map.entry("monochord/record/Logbook.java", "SQL"),
            Map.entry("monochord/record/KnowledgeQuery.java", "SQL"),
            Map.entry("monochord/sound/Synthesis.java", "names that the synthesizer of the JDK has for its settings"),
            Map.entry("monochord/harmony/colour/BorrowedIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/DominantIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/LineIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/AddedToneIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/UndeclaredChanges.java", MOVES),
            Map.entry("monochord/harmony/colour/IdiomNames.java", MOVES));

    /** What is counted, may not grow either, and is said to nobody, and what it is instead. */
    private static final Map<String, String> NOT_SAID = Map.ofEntries(
            Map.entry("monochord/course/FirstQuestions.java", "answers that are read"),
            Map.entry("monochord/shell/sentence/Everyday.java", "answers that are read"),
            Map.entry("monochord/shell/verb/course/NotesVerb.java", "names that are read"),
            Map.entry("monochord/harmony/Instrument.java", "names that are read"),
            Map.entry("monochord/theory/Key.java", "names that are read"),
            Map.entry("monochord/theory/ScaleKind.java", "names that are read; a language says them by its own"),
            Map.entry("monochord/theory/note/Degree.java", "names of degrees; a language says them by its own"),
            Map.entry("monochord/sound/Patch.java", "a name of General MIDI, as an example to type"),
            Map.entry("monochord/lesson/Fill.java", "what may stand in a fill, as an example to write"),
            Map.entry("monochord/shell/Training.java", "lines that are typed while the program is built"),
            Map.entry("monochord/text/naming/FirstWord.java", "finds names in the prose of lessons"),
            Map.entry("monochord/text/naming/InProse.java", "finds names in the prose of lessons"),
            Map.entry("monochord/view/notebook/CellTrouble.java", "finds a refusal in what a cell says"),
            Map.entry("monochord/record/Agenda.java", "the first line of a file"),
            Map.entry("monochord/record/Register.java", "the name of a thread"),
            Map.entry("monochord/sound/keyboard/Connection.java", "names of threads"),
            Map.entry("monochord/sound/keyboard/MidiKeyboard.java", "the name of a thread"),
            Map.entry("monochord/view/web/WebExchange.java", "classes of a style sheet"),
            Map.entry("monochord/view/web/WebPage.java", "markup"));

    /** What is still said in texts put together from pieces. */
    private static final Pattern STILL_ENGLISH = Pattern.compile("monochord/cell/far/.*");

    /** Words in which answers and subjects are read; verdicts, hints and questions are phrases. */
    private static final Pattern READ = Pattern.compile("monochord/practice/(reading|answer|skill)/.*");

    /** Two words with a space between them, as no id, pattern or name of an option has. */
    private static final Pattern PROSE = Pattern.compile("[A-Za-z]{2,}[,;:]? [a-z]{2,}");

    private static final Pattern PLACE = Pattern.compile("\\{([0-9])}");

    /** Methods of one class that hand a clause on to a refusal. */
    private static final Set<String> REFUSING = Set.of("unexpected", "because", "refused");

    /** Makes clauses of the texts that it is handed, which are looked at where they come from. */
    private static final String HANDS_TEMPLATES_ON = "monochord/theory/note/Unreadable.java";

    private static final Map<String, ExpressionTree> constants = new HashMap<>();
    private static final Set<Tree> known = new HashSet<>();
    private static final List<Template> templates = new ArrayList<>();
    private static final List<String> faults = new ArrayList<>();
    private static final Map<String, Integer> english = new TreeMap<>();

    /** @param parts how many parts the call hands over */
    private record Template(String where, String english, int parts) {
        Set<Integer> places() {
            Set<Integer> places = new HashSet<>();
            PLACE.matcher(english).results().forEach(found -> places.add(Integer.parseInt(found.group(1))));
            return places;
        }
    }

    @BeforeAll
    static void readTheSources() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
                Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
            List<Path> java = sources.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            var task = (JavacTask)
                    compiler.getTask(null, files, null, null, null, files.getJavaFileObjectsFromPaths(java));
            List<CompilationUnitTree> units = new ArrayList<>();
            task.parse().forEach(units::add);
            units.forEach(unit -> new Constants().scan(unit, null));
            units.forEach(unit -> new Finder(file(unit)).scan(unit, null));
            units.forEach(unit -> new Counter(file(unit)).scan(unit, null));
        }
    }

    private static String file(CompilationUnitTree unit) {
        return Path.of("src", "main", "java")
                .toAbsolutePath()
                .relativize(Path.of(unit.getSourceFile().toUri()))
                .toString()
                .replace('\\', '/');
    }

    /** Gathers the texts that have a name, by the name of their class and their own. */
    private static final class Constants extends TreeScanner<Void, Void> {
        private String type = "";

        @Override
        public Void visitClass(ClassTree inner, Void nothing) {
            String around = type;
            type = inner.getSimpleName().toString();
            super.visitClass(inner, nothing);
            type = around;
            return null;
        }

        @Override
        public Void visitVariable(VariableTree variable, Void nothing) {
            boolean constant = variable.getModifiers().getFlags().contains(Modifier.STATIC);
            if (constant && variable.getInitializer() != null) {
                constants.put(type + "." + variable.getName(), variable.getInitializer());
            }
            return super.visitVariable(variable, nothing);
        }
    }

    /** Goes through one file and finds the templates in it, and what else is accounted for. */
    private static final class Finder extends TreeScanner<Void, Void> {
        private final String file;
        private final String type;

        Finder(String file) {
            this.file = file;
            this.type = file.replaceAll(".*/|\\.java$", "");
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            String select = call.getMethodSelect().toString();
            String receiver = select.substring(0, Math.max(0, select.lastIndexOf('.')));
            String method = select.substring(select.lastIndexOf('.') + 1);
            List<? extends ExpressionTree> arguments = call.getArguments();
            if (method.equals("examples")) {
                arguments.forEach(this::asItStands);
            } else if (receiver.equals("Phrase") || receiver.equals("Clause")) {
                phrase(method, arguments);
            } else if (receiver.equals("Unreadable") && arguments.size() == 5) {
                clause(arguments.get(2));
                clause(arguments.get(3));
                asItStands(arguments.get(4));
            } else if (method.matches("read|plain") && receiver.matches("AnswerReading|AnswerText")) {
                clause(arguments.get(1));
            } else if (receiver.endsWith("cursor") || REFUSING.contains(select)) {
                arguments.forEach(this::clause);
            }
            return super.visitMethodInvocation(call, nothing);
        }

        /** A rubric says what it reads: {@code a row of notes}. */
        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            if (method.getName().contentEquals("what") && method.getBody() != null) {
                method.getBody().getStatements().stream()
                        .filter(ReturnTree.class::isInstance)
                        .forEach(said -> clause(((ReturnTree) said).getExpression()));
            }
            return super.visitMethod(method, nothing);
        }

        @Override
        public Void visitNewClass(NewClassTree made, Void nothing) {
            String name = made.getIdentifier().toString();
            if (name.equals("Phrase.Forms") || name.equals("Forms")) {
                made.getArguments().forEach(form -> template(form, -1));
            } else if (name.equals("Cursor")) {
                clause(made.getArguments().get(1));
                asItStands(made.getArguments().get(2));
            } else if (name.endsWith("Exception") || name.endsWith("Error")) {
                made.getArguments().forEach(this::texts);
            }
            return super.visitNewClass(made, nothing);
        }

        private void phrase(String method, List<? extends ExpressionTree> arguments) {
            switch (method) {
                case "of", "sentence" -> template(arguments.get(0), arguments.size() - 1);
                case "counted" -> {
                    boolean forms = arguments.get(1) instanceof NewClassTree
                            || arguments.get(1).toString().matches("[A-Z_]+");
                    if (!forms) {
                        template(arguments.get(1), arguments.size() - 3);
                        template(arguments.get(2), arguments.size() - 3);
                    }
                }
                case "byNaming" -> arguments.forEach(naming -> template(naming, 0));
                case "typed", "verb", "toType" -> arguments.forEach(this::asItStands);
                default -> {}
            }
        }

        /** A text that stands for a clause without parts; a clause of its own and a value from elsewhere are left alone. */
        private void clause(ExpressionTree argument) {
            if (argument instanceof ConditionalExpressionTree either) {
                clause(either.getTrueExpression());
                clause(either.getFalseExpression());
            } else if (text(argument) != null) {
                template(argument, 0);
            } else if (argument instanceof BinaryTree && argument.toString().contains("\"")) {
                faults.add(file + ": the template is no literal: " + argument);
            }
        }

        /** What is typed as it stands in every language. */
        private void asItStands(ExpressionTree argument) {
            texts(argument);
            text(argument);
        }

        /** @param parts how many there are, or −1 where the call does not say */
        private void template(ExpressionTree argument, int parts) {
            texts(argument);
            if (argument instanceof ConditionalExpressionTree either) {
                template(either.getTrueExpression(), parts);
                template(either.getFalseExpression(), parts);
                return;
            } else if (argument instanceof SwitchExpressionTree choice) {
                choice.getCases().forEach(one -> template((ExpressionTree) one.getBody(), parts));
                return;
            }
            String text = text(argument);
            if (text == null && !file.equals(HANDS_TEMPLATES_ON)) {
                faults.add(file + ": the template is no literal: " + argument);
            } else if (text != null) {
                templates.add(new Template(file, text, parts));
            }
        }

        /** The texts in an expression are accounted for. */
        private void texts(Tree expression) {
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitLiteral(LiteralTree literal, Void nothing) {
                    known.add(literal);
                    return null;
                }
            }.scan(expression, null);
        }

        /** A text written here or by its name; none for anything else. */
        private String text(ExpressionTree argument) {
            String name = argument instanceof IdentifierTree ? type + "." + argument : argument.toString();
            ExpressionTree constant = constants.get(name);
            if (constant != null) {
                texts(constant);
                return text(constant);
            } else if (argument instanceof LiteralTree literal && literal.getValue() instanceof String text) {
                return text;
            } else if (argument instanceof ParenthesizedTree inner) {
                return text(inner.getExpression());
            } else if (argument instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
                String left = text(sum.getLeftOperand());
                String right = text(sum.getRightOperand());
                return left == null || right == null ? null : left + right;
            }
            return null;
        }
    }

    /** Counts the English texts of one file that are not accounted for. */
    private static final class Counter extends TreeScanner<Void, Void> {
        private final String file;

        Counter(String file) {
            this.file = file;
        }

        private void count() {
            if (!ENGLISH_FOR_GOOD.containsKey(file)) {
                english.merge(file, 1, Integer::sum);
            }
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void nothing) {
            if (literal.getValue() instanceof String text && PROSE.matcher(text).find() && !known.contains(literal)) {
                count();
            }
            return null;
        }
    }

    @Test
    @DisplayName("every template is a literal, so that the sources are the catalogue")
    void everyTemplateIsALiteral() {
        assertTrue(templates.size() > 0, "no templates were seen");
        assertEquals(List.of(), faults);
    }

    @Test
    @DisplayName("every template has a place for each part, and a part for each place")
    void partsAndPlacesAgree() {
        List<String> wrong = new ArrayList<>();
        for (Template template : templates) {
            Set<Integer> places = template.places();
            int highest = places.stream().mapToInt(Integer::intValue).max().orElse(-1);
            boolean gaps = places.size() != highest + 1;
            if (template.parts() >= 0 && (gaps && !template.english().isEmpty() || highest >= template.parts())) {
                wrong.add(template.where() + ": " + template.parts() + " parts for " + template.english());
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    @DisplayName("English that is no phrase yet grows less, in every file")
    void whatIsNoPhraseYetGrowsLess() throws IOException {
        Map<String, Integer> before = new TreeMap<>();
        for (String line : Files.readAllLines(NOT_YET_PHRASES)) {
            String[] columns = line.split("\t");
            before.put(columns[0], Integer.parseInt(columns[1]));
        }
        var grown = new TreeMap<>(english);
        grown.entrySet().removeIf(now -> now.getValue() <= before.getOrDefault(now.getKey(), 0));
        if (!Boolean.getBoolean("first"))
            assertEquals(Map.of(), grown, "more English texts outside of phrases than before");
        if (Boolean.getBoolean("catalogue.accept")) {
            Files.writeString(NOT_YET_PHRASES, table());
        } else {
            assertEquals(before, english, "fewer than before: say so with -Dcatalogue.accept=true");
        }
    }

    @Test
    @DisplayName("what is no phrase yet is said by Java; all else that is counted is said to nobody")
    void onlyJavaIsStillEnglish() {
        Set<String> others = new TreeSet<>(english.keySet());
        others.removeIf(file ->
                STILL_ENGLISH.matcher(file).matches() || READ.matcher(file).matches());
        assertEquals(new TreeSet<>(NOT_SAID.keySet()), others);
    }

    private static String table() {
        return english.entrySet().stream()
                .map(file -> file.getKey() + "\t" + file.getValue() + "\n")
                .collect(Collectors.joining());
    }
}
