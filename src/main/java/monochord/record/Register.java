package monochord.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import monochord.file.OwnerOnly;
import monochord.file.WholeFile;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * The learner's record. It opens its file when it is first needed and never throws: what cannot be kept is held for this
 * sitting and tried again with the next answer, and {@link #notice} says so once. A damaged file is set aside, with a time
 * in its name, and a new one begun.
 *
 * <p>Safe for use by several threads.
 */
public final class Register implements AutoCloseable {
    static final String FILE = "record.db";

    private final Path file;
    private final List<KeptAttempt> waiting = new ArrayList<>();
    private final List<Phrase> notices = new ArrayList<>();
    private Logbook book;
    private boolean troubled;
    private boolean closed;

    /** @param home the folder for the file; it is made with the first attempt */
    public Register(Path home) {
        file = home.resolve(FILE);
    }

    /** Whether there is anything to know: looks at the folder only. */
    public synchronized boolean isEmpty() {
        return waiting.isEmpty() && !isOnDisk();
    }

    private boolean isOnDisk() {
        return book != null || Files.exists(file);
    }

    /** Keeps an attempt: on return it is on disk, or {@link #notice} has something to say. */
    public void keep(Attempt attempt) {
        keep(KeptAttempt.own(attempt));
    }

    /** The same for an attempt that may be a pupil's, or belong to an assignment. */
    public synchronized void keep(KeptAttempt attempt) {
        waiting.add(attempt);
        attempting(() -> {
            opened().append(waiting);
            waiting.clear();
        });
        if (waiting.isEmpty() && troubled) {
            troubled = false;
            notices.add(Phrase.of("Answers are being kept again, and so are those from before."));
        }
    }

    /** What the record says of whose it is, with the answers of this sitting that could not be written. */
    public synchronized Knowledge knowledge() {
        List<Evidence> held = held();
        Knowledge[] known = {Knowledge.of(held)};
        if (isOnDisk()) {
            attempting(() -> known[0] = held.isEmpty() ? readable().knowledge() : Knowledge.of(onDiskAnd(held)));
        }
        return known[0];
    }

    private List<Evidence> onDiskAnd(List<Evidence> held) throws SQLException, IOException {
        List<Evidence> all = new ArrayList<>(held);
        readable().attempts(attempt -> evidence(attempt).ifPresent(all::add));
        return all;
    }

    private List<Evidence> held() {
        List<Evidence> evidence = new ArrayList<>();
        waiting.forEach(attempt -> evidence(attempt).ifPresent(evidence::add));
        return evidence;
    }

    private static Optional<Evidence> evidence(KeptAttempt kept) {
        return kept.isOwn() ? kept.attempt().evidence() : Optional.empty();
    }

    /** The attempts on disk of whose record this is, in the order of time. */
    public void attempts(Consumer<Attempt> each) {
        everyAttempt(kept -> {
            if (kept.isOwn()) {
                each.accept(kept.attempt());
            }
        });
    }

    /** All attempts on disk, whoever gave them, in the order of time. */
    public synchronized void everyAttempt(Consumer<KeptAttempt> each) {
        if (isOnDisk()) {
            attempting(() -> readable().attempts(each));
        }
    }

    /**
     * Copies the record into another file, whole or not at all.
     *
     * @return how many attempts are in it
     * @throws IOException with a message for the learner
     */
    public synchronized int copy(Path into) throws IOException {
        int[] count = {0};
        if (!isOnDisk()) {
            throw new Failure(Phrase.of("nothing is on record yet"));
        }
        WholeFile.writePrivately(
                into, part -> count[0] = telling(file, () -> readable().copy(part)));
        return count[0];
    }

    /**
     * Brings back what is in a copy and not here; what is here stays. What pupils gave counts once, as {@link ClassRecord}
     * says.
     *
     * @return how many attempts came back
     * @throws IOException with a message for the learner
     */
    public synchronized int bringBack(Path from) throws IOException {
        if (!Files.isRegularFile(from)) {
            throw new Failure(from.toString(), Phrase.of("there is no such file"));
        }
        Set<KeptAttempt> missing = new LinkedHashSet<>();
        telling(from, () -> {
            try (Logbook copy = Logbook.openForReading(from)) {
                copy.attempts(missing::add);
                return missing.size();
            }
        });
        return telling(file, () -> {
            opened().attempts(missing::remove);
            List<KeptAttempt> own = missing.stream().filter(KeptAttempt::isOwn).toList();
            opened().append(own);
            return own.size()
                    + ClassRecord.keep(
                            opened(),
                            missing.stream().filter(kept -> !kept.isOwn()).toList());
        });
    }

    /** Something to do with a file, and how many attempts it was done to. */
    private interface CountedRows {
        int run() throws SQLException, IOException;
    }

    private static int telling(Path file, CountedRows work) throws IOException {
        try {
            return work.run();
        } catch (SQLException failed) {
            throw new Failure(FileTrouble.reason(failed, file), failed);
        }
    }

    /** Opens the file and reads it behind the learner's thinking, so that neither the first answer nor a set waits for it. */
    public void openBehind() {
        Thread opening = new Thread(this::openIfStillWanted, "opens the record");
        opening.setDaemon(true);
        opening.start();
    }

    private synchronized void openIfStillWanted() {
        if (!closed) {
            attempting(() -> opened().knowledge());
        }
    }

    /** What there is to tell the learner, each thing once; often nothing. */
    public synchronized List<Phrase> notice() {
        List<Phrase> all = List.copyOf(notices);
        notices.clear();
        return all;
    }

    /** Something to do with the file; a damaged one is changed for a new one, and it is done again. */
    private interface Work {
        void run() throws SQLException, IOException;
    }

    private synchronized void attempting(Work work) {
        try {
            try {
                work.run();
            } catch (SQLException failed) {
                if (!FileTrouble.isDamage(failed)) {
                    throw failed;
                }
                setAside();
                work.run();
            }
        } catch (SQLException | IOException | LinkageError failed) {
            giveUp(failed);
        }
    }

    /** The next answer opens the file anew, for what stood in the way may be gone by then. */
    private void giveUp(Throwable failed) {
        letGo();
        if (!troubled) {
            notices.add(Phrase.of(
                    "Answers are not being kept: {0}. The sitting goes on; what it holds is kept as soon as that is put right.",
                    FileTrouble.reason(failed, file)));
        }
        troubled = true;
    }

    private Logbook opened() throws SQLException, IOException {
        if (book == null) {
            OwnerOnly.folder(file.getParent());
            OwnerOnly.file(file);
            book = Logbook.open(file);
        }
        return book;
    }

    /** The open file, or one open for reading alone where it cannot be written. */
    private Logbook readable() throws SQLException, IOException {
        try {
            return opened();
        } catch (SQLException unwritable) {
            if (FileTrouble.isDamage(unwritable) || !Files.isReadable(file)) {
                throw unwritable;
            }
            book = Logbook.openForReading(file);
            return book;
        }
    }

    private void setAside() throws IOException {
        letGo();
        notices.add(DamagedFile.move(file));
    }

    /** Closes the file; it opens again when it is needed. */
    @Override
    public synchronized void close() {
        closed = true;
        letGo();
    }

    /** All that was kept is on disk already, so there is nothing to lose by a failure to close. */
    private void letGo() {
        Logbook closing = book;
        book = null;
        if (closing != null) {
            closing.close();
        }
    }
}
