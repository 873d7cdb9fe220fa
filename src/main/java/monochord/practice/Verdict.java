package monochord.practice;

import monochord.text.Phrase;
import monochord.text.naming.AsTyped;
import monochord.theory.note.Unreadable;

/**
 * What is said to an answer.
 *
 * @param misconception the id of the {@link Misconception} that leads to this answer, or null if none is known
 * @param said what was found, in one to three sentences to the learner
 * @param expected a right answer in ASCII, in its customary form
 * @param refusal why the text could not be read; null where it was
 */
public record Verdict(Grade grade, String misconception, Phrase said, String expected, Unreadable refusal) {
    /** @param misconception what leads to this answer, or null if nothing is known to */
    public static Verdict of(Grade grade, Misconception misconception, Phrase said, String expected) {
        return new Verdict(grade, misconception == null ? null : misconception.id(), said, expected, null);
    }

    /** On a text that cannot be read, which counts for nothing. */
    public static Verdict unreadable(Unreadable refusal, String expected) {
        return new Verdict(Grade.UNREADABLE, null, Phrase.of("{0}.", Phrase.refusal(refusal)), expected, refusal);
    }

    /** What the learner is told. */
    public Phrase message() {
        return grade == Grade.NEARLY ? Phrase.sentence("Nearly.").then(said) : said;
    }

    /** The same in other words. */
    public Verdict saying(Phrase words) {
        return new Verdict(grade, misconception, words, expected, refusal);
    }

    /** The same, a refusal quoting the answer as it was typed, whatever the notes in it are called. */
    public Verdict asTyped(AsTyped answer) {
        return refusal == null ? this : unreadable(answer.restored(refusal), expected);
    }
}
