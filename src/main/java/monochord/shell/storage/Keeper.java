package monochord.shell.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Knowledge;
import monochord.record.Agenda;
import monochord.record.Bookmarks;
import monochord.record.KeptSet;
import monochord.text.Failure;
import monochord.text.Phrase;

/** What keeps a learner's answers and says what they show. */
public interface Keeper {
    /** A question has been put: an answer will follow. */
    void ready();

    /** On return the attempt is safe, or {@link #notices} has something to say. */
    void keep(Attempt attempt);

    Knowledge knowledge();

    /** What the learner must be told, each thing once. */
    List<Phrase> notices();

    /** What the last sitting left for this one; quick, for it is read before the first prompt. */
    Agenda agenda();

    /** Which lessons are finished, and where others were left. */
    Bookmarks bookmarks();

    /** Keeps that for the next sitting, in place of what stood there. */
    void keep(Bookmarks bookmarks);

    /** How far the day's set has come. */
    KeptSet set();

    /** Keeps that, in place of what stood there. */
    void keep(KeptSet set);

    /** Where it is all kept; nothing where it is forgotten when the program ends. */
    default Optional<Path> place() {
        return Optional.empty();
    }

    /** Where the list of a class is, and what its pupils give; nothing where neither is kept. */
    default Optional<Path> classFolder() {
        return place();
    }

    /**
     * Copies all answers into a file.
     *
     * @return how many
     * @throws IOException with a message for the learner
     */
    default int copy(Path into) throws IOException {
        throw new Failure(Phrase.of("no record is kept in this sitting"));
    }

    /**
     * Brings back the answers of a copy that are not here.
     *
     * @return how many
     * @throws IOException with a message for the learner
     */
    default int bringBack(Path from) throws IOException {
        return copy(from);
    }

    /** The sitting ends, and leaves this for the next. */
    void leave(Agenda agenda);

    /** One that forgets everything when the program ends, and has nothing to tell. */
    static Keeper inMemory() {
        return new InMemoryKeeper(Optional.empty());
    }

    /** The same, with what a class gives in this folder, which is gone with the sitting. */
    static Keeper inMemory(Path classFolder) {
        return new InMemoryKeeper(Optional.of(classFolder));
    }
}
