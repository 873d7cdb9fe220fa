package monochord.classroom;

/**
 * How an assignment is to be done.
 *
 * @param tries how often each question may be answered, or {@link #ANY}
 * @param hints whether hints may be taken
 * @param atOnce whether each answer is judged at once; else the verdicts come with the marking
 */
public record AssignmentTerms(int tries, boolean hints, boolean atOnce) {
    /** As often as one likes. */
    public static final int ANY = 0;

    public static final int MOST_TRIES = 9;

    /** As in a lesson. */
    public static final AssignmentTerms OPEN = new AssignmentTerms(ANY, true, true);

    /** @throws IllegalArgumentException if tries are below 0 or above {@link #MOST_TRIES} */
    public AssignmentTerms {
        if (tries < ANY || tries > MOST_TRIES) {
            throw new IllegalArgumentException("tries are from " + ANY + " to " + MOST_TRIES + ", not " + tries);
        }
    }

    /** Whether so many answers to one question are within the terms. */
    public boolean allow(int given) {
        return tries == ANY || given <= tries;
    }
}
