package monochord.shell.sitting;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.shell.journal.Drafts;
import monochord.shell.trust.Trust;
import monochord.theory.Unreadable;
import monochord.view.Answer;

/** What a sitting may reach beyond itself: files, drafts, and what understands its lines. */
public final class Outside {
    private final Path folder;
    private Seal seal;
    private volatile Seal inner;
    private Trust trust = Trust.none();
    private Drafts drafts;
    private Conversation conversation;
    private Supplier<Answer> consent;

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

    /** What is said of files here, with their names as they were typed, wherever the folder is. */
    public String named(String message) {
        Path here = seal == null ? folder : seal.folder();
        return here.toString().isEmpty()
                ? message
                : message.replace(here + here.getFileSystem().getSeparator(), "");
    }

    /** Closes the sitting off. */
    public void closeOff(Seal newSeal) {
        seal = newSeal;
    }

    /** What closes the sitting off, if anything does. */
    public Optional<Seal> seal() {
        return Optional.ofNullable(seal);
    }

    /** A seal for what is typed again closed off from here. */
    public Seal newSeal(Path empty) {
        inner = seal == null ? Seal.around(empty) : seal.within(empty);
        return inner;
    }

    /** Breaks off what is being typed again closed off from here; from another thread. */
    public void stop() {
        Seal broken = inner;
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

    /** Asks for a yes: if the next line is one, this is done; any other line takes the question away. */
    public void askConsent(Supplier<Answer> whatThen) {
        consent = whatThen;
    }

    /** What was to be done on a yes, taken away. */
    public Optional<Supplier<Answer>> takeConsent() {
        Optional<Supplier<Answer>> asked = Optional.ofNullable(consent);
        consent = null;
        return asked;
    }
}
