package monochord.shell.sitting;

import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.text.naming.AsTyped;

/** An answer to the open question, and the verdict on it. */
public record Judged(Question question, AsTyped text, Verdict verdict) {
    public boolean isRead() {
        return verdict.grade() != Grade.UNREADABLE;
    }
}
