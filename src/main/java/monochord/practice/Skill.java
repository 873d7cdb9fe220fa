package monochord.practice;

import java.util.List;
import java.util.SplittableRandom;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** Something a learner can do, and the questions that show it. */
public interface Skill {
    /** As it is written in lessons and at the prompt: {@code borrowed-chord}. */
    String id();

    /** A few words for a heading: {@code Borrowed chords}. */
    Phrase title();

    /** The subjects worth asking in that key, from easy to awkward, in the text that {@link #question} reads. */
    List<String> subjects(Key key);

    /**
     * With how many of its subjects, counted from the easy end, a learner begins, where the harder ones belong to a later
     * lesson and come one after the other; 0 where a third of them is right for a beginner.
     */
    default int firstSubjects() {
        return 0;
    }

    /** The keys worth asking it in, from easy to awkward. */
    default List<Key> keys() {
        return Key.majorKeys();
    }

    /**
     * @param key where a subject that names no key or root of its own is asked
     * @throws Unreadable if the skill cannot take this subject, or not in this key
     */
    Question question(Key key, String subject);

    /**
     * The same where chance decides more than the subject: what is heard of it, how high and how layout out. The same seed
     * asks the same.
     *
     * @throws Unreadable as without a seed
     */
    default Question question(Key key, String subject, long seed) {
        return question(key, subject).withSeed(seed);
    }

    /**
     * A question on one of the key's subjects; the same seed picks the same one.
     *
     * @throws Unreadable if there is nothing to ask in a key so far out
     */
    default Question question(Key key, long seed) {
        List<String> subjects = subjects(key);
        if (subjects.isEmpty()) {
            throw Unreadable.because(
                    key.toString(),
                    0,
                    "a key to ask in",
                    Clause.of("{0} has no question there", id()),
                    "ask " + id() + " in C");
        }
        String subject = subjects.get(new SplittableRandom(seed).nextInt(subjects.size()));
        return question(key, subject, seed);
    }
}
