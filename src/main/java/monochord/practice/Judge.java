package monochord.practice;

import java.util.List;
import monochord.text.Phrase;

/** Knows the right answer to one question, and the wrong ones that are worth telling apart. */
public interface Judge {
    /** Judges any text whatever; a text that cannot be read gets {@link Grade#UNREADABLE}. */
    Verdict judge(String answer);

    /** The right answer in ASCII, in its customary form. */
    String expected();

    /** What each wrong procedure gives here; one that gives the right answer is left out. */
    List<Mistake> mistakes();

    /**
     * How to go on from an answer that is not right: what of it is right, then the step that failed, narrower each time, and
     * never what is missing itself.
     *
     * @return nothing where the hints of the question serve better, or the answer cannot be read
     */
    default List<Phrase> help(String answer) {
        return List.of();
    }
}
