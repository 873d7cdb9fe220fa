package monochord.practice;

import java.util.List;

/** Knows the right answer to one question, and the wrong ones that are worth telling apart. */
public interface Judge {
    /** Judges any text whatever; a text that cannot be read gets {@link Grade#UNREADABLE}. */
    Verdict judge(String answer);

    /** The right answer in ASCII, in its customary form. */
    String expected();

    /** What each wrong procedure gives here; one that gives the right answer is left out. */
    List<Mistake> mistakes();
}
