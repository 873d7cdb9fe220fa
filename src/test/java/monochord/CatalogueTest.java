package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** What stays English: said where a part of the program is damaged, by a class that may load no other. */
    private static final Set<String> ENGLISH_FOR_GOOD = Set.of("monochord/shell/Main.java");

    /** Two words with a space between them, as no id, pattern or name of an option has. */
    private static final Pattern PROSE = Pattern.compile("[A-Za-z]{2,}[,;:]? [a-z]{2,}");

    private static final Pattern PLACE = Pattern.compile("\\{([0-9])}");

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
            for (CompilationUnitTree unit : task.parse()) {
                new Finder(unit).scan(unit, null);
            }
        }
    }

    /** Goes through one file. */
    private static final class Finder extends TreeScanner<Void, Void> {
        private final String file;
        private final Set<Tree> known = new HashSet<>();

        Finder(CompilationUnitTree unit) {
            file = Path.of("src", "main", "java")
                    .toAbsolutePath()
                    .relativize(Path.of(unit.getSourceFile().toUri()))
                    .toString()
                    .replace('\\', '/');
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            if (call.getMethodSelect() instanceof MemberSelectTree method
                    && method.getExpression().toString().equals("Phrase")) {
                phrase(method.getIdentifier().toString(), call.getArguments());
            }
            return super.visitMethodInvocation(call, nothing);
        }

        @Override
        public Void visitNewClass(NewClassTree made, Void nothing) {
            String name = made.getIdentifier().toString();
            if (name.equals("Phrase.Forms") || name.equals("Forms")) {
                made.getArguments().forEach(form -> template(form, -1));
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
                default -> {}
            }
        }

        /** @param parts how many there are, or −1 where the call does not say */
        private void template(ExpressionTree argument, int parts) {
            texts(argument);
            String text = text(argument);
            if (text == null) {
                faults.add(file + ": the template is no literal: " + argument);
            } else {
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

        private static String text(ExpressionTree argument) {
            if (argument instanceof LiteralTree literal && literal.getValue() instanceof String text) {
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

        private void count() {
            if (!ENGLISH_FOR_GOOD.contains(file)) {
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

    private static String table() {
        return english.entrySet().stream()
                .map(file -> file.getKey() + "\t" + file.getValue() + "\n")
                .collect(Collectors.joining());
    }
}
