package monochord.practice;

/**
 * What is said to an answer.
 *
 * @param misconception the id of the {@link Misconception} that leads to this answer, or null if none is known
 * @param message one to three sentences to the learner, with the signs of printed music
 * @param expected a right answer in ASCII, in its customary form
 */
public record Verdict(Grade grade, String misconception, String message, String expected) {
    /** The same in other words. */
    public Verdict saying(String words) {
        return new Verdict(grade, misconception, words, expected);
    }
}
