package monochord.cell;

import java.io.IOException;
import java.time.Duration;
import java.util.Set;
import java.util.function.Consumer;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import monochord.theory.Key;

/** One run of a cell, with an eye on the clock. Whatever the cell does, it is over soon after its time. */
final class CellRun {
    private static final long GRACE = Duration.ofSeconds(2).toNanos();
    private static final long LOOK_MILLIS = 50;

    private final Link link;
    private final Consumer<Message> take;
    private long deadline;
    private RunEnd reason;
    private volatile boolean stopAsked;
    private Set<String> names = Set.of();

    /** @param take is handed whatever the cell says before it is done */
    CellRun(Link link, Duration limit, Consumer<Message> take) {
        this.link = link;
        this.take = take;
        this.deadline = System.nanoTime() + limit.toNanos();
    }

    /** From another thread: the learner has had enough. */
    void stop() {
        stopAsked = true;
    }

    /** What the cell has by name, after a run that it has ended itself. */
    Set<String> names() {
        return names;
    }

    /** Runs it to its end, whatever that is. */
    RunEnd run(Message text) {
        try {
            link.ask(text);
        } catch (IOException gone) {
            return RunEnd.byExit(link.exitStatus());
        }
        RunEnd end = null;
        while (end == null) {
            Message said = link.next(LOOK_MILLIS);
            end = said == null ? watch() : hear(said);
        }
        return end;
    }

    private RunEnd hear(Message said) {
        switch (said.kind()) {
            case DONE -> {
                take.accept(said);
                names = Set.copyOf(said.from(2));
                return reason != null ? reason : said.text(0).isEmpty() ? RunEnd.REFUSED : RunEnd.GOOD;
            }
            case LEAVES -> {
                return RunEnd.LEFT;
            }
            default -> take.accept(said);
        }
        return watch();
    }

    /** First asks the cell to stop, again and again, for it may be between two snippets; then loses patience. */
    private RunEnd watch() {
        if (link.isGone()) {
            return RunEnd.byExit(link.exitStatus());
        }
        long now = System.nanoTime();
        if (reason == null && (stopAsked || now >= deadline)) {
            reason = stopAsked ? RunEnd.STOPPED : RunEnd.TOO_LONG;
            deadline = now + GRACE;
        } else if (reason != null && now >= deadline) {
            return RunEnd.UNSTOPPABLE;
        }
        if (reason != null) {
            link.stop();
        }
        return null;
    }

    static Message asked(String text, Key key, boolean again) {
        return Message.of(MessageKind.RUN, text, key.toString(), again ? "again" : "");
    }
}
