package monochord.cell.sandbox;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import jdk.jshell.ImportSnippet;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl.ExecutionControlException;
import monochord.cell.protocol.Frame;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import monochord.theory.Key;

/** Does what the line asks for, one thing after the other. */
final class RequestHandler {
    private static final List<String> IMPORTS = List.of(
            "java.util.*",
            "java.util.function.*",
            "java.util.stream.*",
            "monochord.theory.*",
            "monochord.theory.note.*",
            "monochord.harmony.*",
            "monochord.harmony.melody.Melody",
            "monochord.harmony.melody.Fit",
            "monochord.harmony.motion.Motion",
            "monochord.harmony.motion.Passage",
            "monochord.harmony.voicing.*",
            "static " + CellWords.class.getName() + ".*");
    /** What every value can do and no musician asks for. */
    private static final Set<String> OF_ALL =
            Set.of("wait(", "notify()", "notifyAll()", "getClass()", "hashCode()", "equals(");

    private static final int MOST_SUGGESTIONS = 60;
    private static final int MOST_NAMES = 250;
    private static final int MOST_VARIABLES = 100;

    private final MessageSender post;
    private final Engine engine = new Engine();
    private final Output output;
    private final JShell shell;
    private final SourceCodeAnalysis analysis;

    RequestHandler(MessageSender post) {
        this.post = post;
        output = new Output(text -> post.send(Message.of(MessageKind.PRINTED, text)));
        PrintStream printer = new PrintStream(output, true, StandardCharsets.UTF_8);
        System.setOut(printer);
        System.setErr(printer);
        shell = JShell.builder()
                .in(InputStream.nullInputStream())
                .executionEngine(new EngineProvider(engine), Map.of())
                .build();
        analysis = shell.sourceCodeAnalysis();
        IMPORTS.forEach(name -> shell.eval("import " + name + ";"));
        warmUp();
    }

    /** The first of anything takes longest: here, where nobody waits for it, what most cells need is met once. */
    private void warmUp() {
        Snippets unseen = new Snippets(
                shell,
                analysis,
                engine,
                new RunContext(post, RunContext.current().key(), true));
        for (String text : List.of("var warm = progression(\"F C G Ab\")", "warm.chords().get(1).tones()")) {
            extent(text);
            unseen.run(text);
        }
        shell.snippets()
                .filter(snippet -> !(snippet instanceof ImportSnippet))
                .toList()
                .forEach(shell::drop);
    }

    void serve(RequestReader requests) throws InterruptedException {
        post.send(Message.of(MessageKind.READY));
        while (true) {
            Frame frame = requests.next();
            Message asked = frame.message();
            post.answers(frame.request());
            try {
                answer(asked);
            } catch (RuntimeException | StackOverflowError broken) {
                giveUp(asked.kind());
            }
        }
    }

    private void answer(Message asked) {
        switch (asked.kind()) {
            case RUN ->
                run(asked.text(0), Key.parse(asked.text(1)), !asked.text(2).isEmpty());
            case MEASURE ->
                post.send(Message.of(MessageKind.MEASURED, extent(asked.text(0)).name()));
            case COMPLETE -> complete(asked.text(0), asked.number(1, 0));
            case LOOK_UP -> lookUp(asked.text(0));
            default -> throw new IllegalArgumentException("the line never says " + asked.kind());
        }
    }

    private void giveUp(MessageKind asked) {
        switch (asked) {
            case MEASURE -> post.send(Message.of(MessageKind.MEASURED, Completeness.COMPLETE.name()));
            case COMPLETE -> post.send(Message.of(MessageKind.COMPLETED, "0"));
            default -> post.send(Message.of(MessageKind.LOOKED_UP, ""));
        }
    }

    private void run(String text, Key key, boolean still) {
        output.open(still ? 0 : Limits.PRINTED);
        RunContext scene = new RunContext(post, key, still);
        RunContext.open(scene);
        boolean good = false;
        try {
            good = new Snippets(shell, analysis, engine, scene).run(text);
        } catch (StackOverflowError deep) {
            post.send(SnippetFailure.of("This is nested too deeply. Say it in smaller steps.")
                    .toLine());
        } finally {
            RunContext.close();
            Watchdog.checkThreads();
            done(good);
        }
    }

    private void done(boolean good) {
        List<String> texts = new ArrayList<>();
        texts.add(good ? "good" : "");
        texts.add(Long.toString(Math.min(output.end(), Integer.MAX_VALUE)));
        shell.snippets()
                .filter(snippet -> shell.status(snippet).isActive())
                .map(RequestHandler::name)
                .flatMap(Optional::stream)
                .filter(name -> !name.startsWith(MessageKind.VARIABLE))
                .distinct()
                .limit(MOST_NAMES)
                .forEach(texts::add);
        shell.variables()
                .map(VarSnippet::name)
                .filter(name -> !name.startsWith(MessageKind.VARIABLE))
                .limit(MOST_VARIABLES)
                .forEach(name -> texts.add(MessageKind.VARIABLE + name));
        post.send(new Message(MessageKind.DONE, texts));
    }

    private static Optional<String> name(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            return Optional.of(variable.name());
        } else if (snippet instanceof MethodSnippet method) {
            return Optional.of(method.name());
        }
        return snippet instanceof TypeDeclSnippet type ? Optional.of(type.name()) : Optional.empty();
    }

    /** Text that can never become Java is unknown; the line decides what to make of it. */
    private Completeness extent(String text) {
        String rest = text;
        Completeness extent = Completeness.EMPTY;
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo info = analysis.analyzeCompletion(rest);
            extent = info.completeness();
            if (!extent.isComplete() || extent == Completeness.UNKNOWN) {
                return extent;
            }
            rest = info.remaining();
        }
        return extent;
    }

    private void complete(String text, int cursor) {
        int[] anchor = {cursor};
        List<String> texts = new ArrayList<>();
        List<String> found = analysis.completionSuggestions(text, Math.min(cursor, text.length()), anchor).stream()
                .map(Suggestion::continuation)
                .filter(name -> !name.contains("$") && !OF_ALL.contains(name))
                .distinct()
                .limit(MOST_SUGGESTIONS)
                .toList();
        texts.add(Integer.toString(anchor[0]));
        texts.addAll(found);
        post.send(new Message(MessageKind.COMPLETED, texts));
    }

    private void lookUp(String name) {
        String text = shell.variables()
                .filter(variable ->
                        variable.name().equals(name) && shell.status(variable).isActive())
                .findFirst()
                .map(shell::varValue)
                .orElse("");
        post.send(Message.of(MessageKind.LOOKED_UP, text));
    }

    /** Stops the snippet that runs, from another thread. */
    void stop() {
        try {
            engine.stop();
        } catch (ExecutionControlException unstoppable) {
            // the line waits a moment, then ends this JVM
        }
    }
}
