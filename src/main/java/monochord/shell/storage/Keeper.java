package monochord.shell.storage;

import java.util.List;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Knowledge;
import monochord.record.Agenda;
import monochord.record.Bookmarks;
import monochord.record.KeptSet;
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

    /** The sitting ends, and leaves this for the next. */
    void leave(Agenda agenda);

    /** One that forgets everything when the program ends, and has nothing to tell. */
    static Keeper inMemory() {
        return new InMemoryKeeper();
    }
}
