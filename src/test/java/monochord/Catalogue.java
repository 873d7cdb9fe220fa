package monochord;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
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
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;

/**
 * Reads every sentence out of the sources: the templates of phrases, which are the catalogue that another language
 * translates, and the English that is put together from pieces.
 */
final class Catalogue {
    /** Two words with a space between them, as no id, pattern or name of an option has. */
    private static final Pattern PROSE = Pattern.compile("[A-Za-z]{2,}[,;:]? [a-z]{2,}");

    /** Methods of one class that hand a clause on to a refusal. */
    private static final Set<String> REFUSING = Set.of("unexpected", "because", "refused");

    /** Makes clauses of the texts that it is handed, which are looked at where they come from. */
    private static final String HANDS_TEMPLATES_ON = "monochord/theory/note/Unreadable.java";

    private static final Pattern PLACE = Pattern.compile("\\{([0-9])}");

    private final Map<String, ExpressionTree> constants = new HashMap<>();
    private final Set<Tree> known = new HashSet<>();
    private final List<Template> templates = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Integer> english = new TreeMap<>();

    /** @param parts how many parts the call hands over */
    record Template(String where, String english, int parts) {
        Set<Integer> places() {
            Set<Integer> places = new HashSet<>();
            PLACE.matcher(english).results().forEach(found -> places.add(Integer.parseInt(found.group(1))));
            return places;
        }
    }

    private Catalogue() {}

    static Catalogue ofTheSources() {
        Catalogue catalogue = new Catalogue();
        JavaSources sources = JavaSources.ofTheProgram();
        sources.units().forEach(unit -> catalogue.new Constants().scan(unit, null));
        sources.units().forEach(unit -> catalogue.new Finder(sources.file(unit)).scan(unit, null));
        sources.units().forEach(unit -> catalogue.new Counter(sources.file(unit)).scan(unit, null));
        return catalogue;
    }

    List<Template> templates() {
        return templates;
    }

    /** Where a template is no literal. */
    List<String> faults() {
        return faults;
    }

    /** How many English texts outside of templates each file holds. */
    Map<String, Integer> english() {
        return english;
    }

    /** Gathers the texts that have a name, by the name of their class and their own. */
    private final class Constants extends TreeScanner<Void, Void> {
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
    private final class Finder extends TreeScanner<Void, Void> {
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
    private final class Counter extends TreeScanner<Void, Void> {
        private final String file;

        Counter(String file) {
            this.file = file;
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void nothing) {
            if (literal.getValue() instanceof String text && PROSE.matcher(text).find() && !known.contains(literal)) {
                english.merge(file, 1, Integer::sum);
            }
            return null;
        }
    }
}
