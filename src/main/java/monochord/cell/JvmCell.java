package monochord.cell;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Supplier;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * Runs Java in a JVM of its own, which is started when it is first needed, and anew when a cell has ended it; then the
 * cells that went well are run again, without a picture or a sound.
 */
public final class JvmCell implements Cell {
    private static final long ANSWER_MILLIS = 30_000;
    private static final long COMPLETION_MILLIS = 400;

    private final Supplier<Duration> limit;
    private final ReentrantLock turn = new ReentrantLock();
    private final CellHistory past = new CellHistory();
    private volatile Set<String> names = Set.of();
    private volatile CellRun running;
    private Link link;
    private Phrase news = Phrase.NOTHING;
    private boolean closed;

    /** @param limit how long a cell may take; zero turns Java off */
    public JvmCell(Supplier<Duration> limit) {
        this.limit = limit;
    }

    @Override
    public void ready() {
        turn.lock();
        try {
            link();
        } catch (IOException later) {
            end(); // whoever wants something will try again, and be told
        } finally {
            turn.unlock();
        }
    }

    private Link link() throws IOException {
        if (closed) {
            throw new Failure(Phrase.of("the sitting is over"));
        }
        if (limit.get().isZero()) {
            throw new Failure(Phrase.of("by the settings a cell may take no time, cell-seconds=0"));
        }
        if (link != null && link.hasLeft()) {
            end();
        }
        if (link == null) {
            link = Link.open();
            if (!past.isEmpty()) {
                repeat();
            }
        }
        return link;
    }

    /** Runs the earlier cells again; one that now ends the JVM takes those behind it along. */
    private void repeat() throws IOException {
        past.begin();
        for (Optional<CellHistory.Earlier> next = past.next(); next.isPresent(); next = past.next()) {
            CellHistory.Earlier cell = next.get();
            RunEnd end = run(CellRun.asked(cell.text(), cell.key(), true), message -> {});
            past.note(cell, end);
            if (end.isFatal()) {
                end();
                link();
                return;
            }
        }
        news = past.news();
    }

    private RunEnd run(Message asked, Consumer<Message> take) throws IOException {
        CellRun run = new CellRun(link(), limit.get(), take);
        running = run;
        RunEnd end = run.run(asked);
        running = null;
        names = run.names();
        return end;
    }

    @Override
    public CellReport run(String text, Key key) {
        CellReportBuilder report = new CellReportBuilder(text, key);
        turn.lock();
        try {
            RunEnd end = run(CellRun.asked(text, key, false), report::take);
            report.end(end, limit.get());
            past.keep(text, key, end);
            goOn(end);
            report.goesOn(news);
            news = Phrase.NOTHING;
        } catch (IOException failed) {
            end();
            report.fail(Phrase.sentence("Java cannot be run here: {0}.", Failure.told(failed)));
        } finally {
            turn.unlock();
        }
        return report.report();
    }

    private void goOn(RunEnd end) throws IOException {
        if (end.isFatal()) {
            end();
            news = Phrase.sentence("It begins anew.");
            link();
        }
    }

    private void end() {
        names = Set.of();
        if (link != null) {
            link.end();
            link = null;
        }
    }

    @Override
    public Extent extent(String text) {
        String measured = ask(Message.of(MessageKind.MEASURE, text), MessageKind.MEASURED);
        return switch (measured) {
            case "DEFINITELY_INCOMPLETE", "CONSIDERED_INCOMPLETE" -> Extent.PART;
            case "UNKNOWN", "EMPTY" -> Extent.NOT_JAVA;
            default -> Extent.WHOLE;
        };
    }

    @Override
    public Optional<String> typed(String variable) {
        String text = ask(Message.of(MessageKind.LOOK_UP, variable), MessageKind.LOOKED_UP);
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /** A cell that does not answer is ended; what is asked next begins anew. */
    private String ask(Message question, MessageKind expected) {
        turn.lock();
        try {
            Link asked = link();
            asked.ask(question);
            Message answer = next(expected, ANSWER_MILLIS);
            if (answer != null) {
                return answer.text(0);
            }
            end();
        } catch (IOException gone) {
            end();
        } finally {
            turn.unlock();
        }
        return "";
    }

    /** The next answer, if it is of that kind. */
    private Message next(MessageKind expected, long millis) {
        Message answer = link.next(millis);
        return answer != null && answer.kind() == expected ? answer : null;
    }

    @Override
    public Completions complete(String text, int cursor) {
        try {
            if (!turn.tryLock(COMPLETION_MILLIS, TimeUnit.MILLISECONDS)) {
                return new Completions(cursor, List.of());
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return new Completions(cursor, List.of());
        }
        try {
            return link == null ? new Completions(cursor, List.of()) : completed(text, cursor);
        } catch (IOException gone) {
            end();
            return new Completions(cursor, List.of());
        } finally {
            turn.unlock();
        }
    }

    private Completions completed(String text, int cursor) throws IOException {
        link.ask(Message.of(MessageKind.COMPLETE, text, Integer.toString(cursor)));
        Message answer = next(MessageKind.COMPLETED, COMPLETION_MILLIS);
        if (answer == null) {
            return new Completions(cursor, List.of());
        }
        return new Completions(answer.number(0, cursor), answer.from(1));
    }

    @Override
    public boolean holds(String name) {
        return names.contains(name);
    }

    @Override
    public List<String> variables() {
        return names.stream()
                .filter(name -> name.startsWith(MessageKind.VARIABLE))
                .map(name -> name.substring(MessageKind.VARIABLE.length()))
                .sorted()
                .toList();
    }

    @Override
    public void stop() {
        CellRun now = running;
        if (now != null) {
            now.stop();
        }
    }

    @Override
    public void close() {
        stop();
        turn.lock();
        try {
            closed = true;
            end();
        } finally {
            turn.unlock();
        }
    }

    /** The JVM that runs now, or −1 where none does; for whoever watches over it. */
    long pid() {
        return link == null ? -1 : link.pid();
    }

    Path folder() {
        return link == null ? null : link.folder();
    }
}
