package monochord.cell.sandbox;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;

/** Runs the snippets of one cell in turn, until one goes wrong. */
final class Snippets {
    private final JShell shell;
    private final SourceCodeAnalysis analysis;
    private final Engine engine;
    private final RunContext scene;

    Snippets(JShell shell, SourceCodeAnalysis analysis, Engine engine, RunContext scene) {
        this.shell = shell;
        this.analysis = analysis;
        this.engine = engine;
        this.scene = scene;
    }

    /** @return whether all went well */
    boolean run(String text) {
        String rest = text;
        while (!rest.isBlank()) {
            int offset = text.length() - rest.length();
            NextSnippet next = NextSnippet.of(rest, analysis);
            Optional<SnippetFailure> trouble = next.isWhole()
                    ? one(next.source(), text, offset)
                    : Optional.of(new SnippetFailure(missing(text), text.length(), 0));
            if (trouble.isPresent()) {
                scene.send(trouble.get().toLine());
                return false;
            }
            rest = next.rest();
        }
        return true;
    }

    private static String missing(String text) {
        String brackets = Brackets.missing(text);
        return switch (brackets.length()) {
            case 0 -> "Something is missing at the end.";
            case 1 -> "A bracket " + brackets + " is missing at the end.";
            default -> "Brackets are missing at the end: " + String.join(" ", brackets.split(""));
        };
    }

    private Optional<SnippetFailure> one(String source, String text, int offset) {
        for (SnippetEvent event : shell.eval(source)) {
            if (event.causeSnippet() == null) {
                Optional<SnippetFailure> trouble = trouble(event, text, offset);
                if (trouble.isPresent()) {
                    return trouble;
                }
                tell(event);
            }
        }
        return Optional.empty();
    }

    private Optional<SnippetFailure> trouble(SnippetEvent event, String text, int offset) {
        JShellException exception = event.exception();
        if (exception != null) {
            return Optional.of(Thrown.of(exception, shell, event.snippet(), text, offset));
        }
        return event.status() == Status.REJECTED
                ? Optional.of(shell.diagnostics(event.snippet())
                        .filter(Diag::isError)
                        .findFirst()
                        .map(diag -> new Rejected(diag, text, offset, shell).trouble())
                        .orElse(SnippetFailure.of("Java cannot read this.")))
                : Optional.empty();
    }

    private void tell(SnippetEvent event) {
        Snippet snippet = event.snippet();
        if (event.status().isDefined() && snippet.subKind().hasValue() && engine.told() != null) {
            scene.send(engine.told().message(MessageKind.VALUE, name(snippet), type(snippet)));
        } else if (snippet instanceof MethodSnippet || snippet instanceof TypeDeclSnippet) {
            scene.send(Message.of(MessageKind.NOTICE, declared((DeclarationSnippet) snippet, event)));
        }
    }

    private static String name(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            return variable.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND ? "" : variable.name();
        }
        return snippet.subKind() == SubKind.ASSIGNMENT_SUBKIND ? ((ExpressionSnippet) snippet).name() : "";
    }

    private static String type(Snippet snippet) {
        String type = snippet instanceof VarSnippet variable
                ? variable.typeName()
                : snippet instanceof ExpressionSnippet expression ? expression.typeName() : "";
        return Rejected.shortly(type);
    }

    private String declared(DeclarationSnippet snippet, SnippetEvent event) {
        String name = snippet instanceof MethodSnippet method
                ? method.name() + "(" + method.parameterTypes() + ")"
                : snippet.name();
        List<String> missing = shell.unresolvedDependencies(snippet).collect(Collectors.toList());
        String known = event.previousStatus() == Status.NONEXISTENT ? " is known from now on" : " is known anew";
        return missing.isEmpty()
                ? name + known + "."
                : name + known + ", but there is no " + Rejected.listed(missing) + " yet, which it needs.";
    }
}
