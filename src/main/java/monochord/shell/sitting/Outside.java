package monochord.shell.sitting;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import monochord.shell.journal.Drafts;
import monochord.shell.trust.Trust;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** What a sitting may reach beyond itself: files, drafts, and what understands its lines. */
public final class Outside {
    private final Path folder;
    private ReplaySandbox seal;
    private volatile ReplaySandbox inner;
    private Trust trust = Trust.none();
    private Drafts drafts;
    private Conversation conversation;
    private Consent consent;
    private Consumer<Phrase> watcher = how -> {};

    private record Consent(Supplier<Answer> yes, Supplier<Answer> no) {}

    /** @param folder where file names that are not absolute begin */
    Outside(Path folder) {
        this.folder = folder;
    }

    /**
     * The file that a name leads to from here.
     *
     * @throws Unreadable if it can be no name, or leads out of a sitting that is closed off
     */
    public Path file(String name) {
        if (name.isEmpty()) {
            throw Unreadable.because(name, 0, "a file name", "a name is needed", "song.wav");
        }
        try {
            return seal == null ? folder.resolve(name) : seal.file(name);
        } catch (InvalidPathException invalid) {
            throw Unreadable.because(name, 0, "a file name", "it holds a character that no name may hold", "song.wav");
        }
    }

    /** From now on somebody watches how far things have come. */
    public void watch(Consumer<Phrase> other) {
        watcher = other;
    }

    /** Of one thing that begins now. */
    public Progress progress() {
        return new Progress(watcher, System::nanoTime);
    }

    /** What is said of files here, with their names as they were typed, wherever the folder is. */
    public String named(String message) {
        Path here = seal == null ? folder : seal.folder();
        return here.toString().isEmpty()
                ? message
                : message.replace(here + here.getFileSystem().getSeparator(), "");
    }

    /** Why something could not be read or written, with the file as it was typed. */
    public Phrase told(IOException failed) {
        return Failure.told(failed, this::named);
    }

    /** Closes the sitting off. */
    public void closeOff(ReplaySandbox newSeal) {
        seal = newSeal;
    }

    /** What closes the sitting off, if anything does. */
    public Optional<ReplaySandbox> seal() {
        return Optional.ofNullable(seal);
    }

    /** A seal for what is typed again closed off from here. */
    public ReplaySandbox newSeal(Path empty) {
        inner = seal == null ? ReplaySandbox.around(empty) : seal.within(empty);
        return inner;
    }

    /** Breaks off what is being typed again closed off from here; from another thread. */
    public void stop() {
        ReplaySandbox broken = inner;
        if (broken != null) {
            broken.stop();
        }
    }

    public Trust trust() {
        return trust;
    }

    public void take(Trust newTrust) {
        trust = newTrust;
    }

    /** The learner's drafts, where somebody sits who may want them. */
    public Optional<Drafts> drafts() {
        return Optional.ofNullable(drafts);
    }

    public void take(Drafts newDrafts) {
        drafts = newDrafts;
    }

    /** What understands the lines that are typed here. */
    public Conversation conversation() {
        return conversation;
    }

    public void take(Conversation newConversation) {
        conversation = newConversation;
    }

    /**
     * Asks for a yes. Any other line takes the question away.
     *
     * @param yes what is done if the next line says yes
     * @param no what is done if it says nothing, or to skip
     */
    public void askConsent(Supplier<Answer> yes, Supplier<Answer> no) {
        consent = new Consent(yes, no);
    }

    /** Whether the next line may say yes. */
    public boolean asksConsent() {
        return consent != null;
    }

    /** Takes the question away, with this answer to it. */
    public Answer consent(boolean given) {
        Consent asked = consent;
        consent = null;
        return (given ? asked.yes : asked.no).get();
    }

    /** Takes the question away. */
    public void forgetConsent() {
        consent = null;
    }
}
