package monochord.practice;

import java.util.Locale;

/** How an answer was judged. */
public enum Grade {
    RIGHT,
    /** Right, with something to say: another order, another customary name. */
    REMARK,
    /** One thing is off, or it only sounds right. */
    NEARLY,
    WRONG,
    /** The text could not be read; that never counts against the learner. */
    UNREADABLE;

    /** Whether the answer counts as right. */
    public boolean isRight() {
        return this == RIGHT || this == REMARK;
    }

    /** In small letters: {@code nearly}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
