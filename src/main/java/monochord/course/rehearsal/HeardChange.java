package monochord.course.rehearsal;

import monochord.text.Phrase;
import monochord.theory.note.NoteName;

/**
 * What came of a change.
 *
 * @param late milliseconds after it was due, below 0 before; 0 where it was not played or was held from before
 * @param note the one that was wrong or missing, else null
 * @param quarter milliseconds of a quarter, for words
 */
public record HeardChange(DueChange due, What what, double late, NoteName note, double quarter) {
    /** What there is to say of it. */
    public enum What {
        CLEAN,
        EARLY,
        LATE,
        WRONG_NOTE,
        MISSING_NOTE,
        NOT_PLAYED
    }

    public boolean isClean() {
        return what == What.CLEAN;
    }

    /** Which note or beat it was, in a sentence. */
    public Phrase inWords(int firstBar) {
        Phrase place = Phrase.of("Bar {0}, beat {1}", firstBar + due.bar(), beat());
        return switch (what) {
            case CLEAN -> Phrase.sentence("{0}: {1} came in time.", place, due.name());
            case EARLY -> Phrase.sentence("{0}: {1} came early, by {2}.", place, due.name(), amount());
            case LATE -> Phrase.sentence("{0}: {1} came late, by {2}.", place, due.name(), amount());
            case WRONG_NOTE -> Phrase.sentence("{0}: {1} does not belong to {2}.", place, note, due.name());
            case MISSING_NOTE -> Phrase.sentence("{0}: {1} was missing in {2}.", place, note, due.name());
            case NOT_PLAYED -> Phrase.sentence("{0}: {1} was not heard.", place, due.name());
        };
    }

    private Phrase beat() {
        long whole = due.beat().numerator() / due.beat().denominator();
        boolean on = due.beat().denominator() == 1;
        return on ? Phrase.of("{0}", (int) whole + 1) : Phrase.of("{0} and", (int) whole + 1);
    }

    /** In parts of a beat, as a teacher would say it. */
    private Phrase amount() {
        double beats = Math.abs(late) / quarter;
        if (beats >= 0.85) {
            return Phrase.of("a beat or more");
        } else if (beats >= 0.42) {
            return Phrase.of("about half a beat");
        } else if (beats >= 0.29) {
            return Phrase.of("about a third of a beat");
        }
        return beats >= 0.2 ? Phrase.of("about a quarter of a beat") : Phrase.of("a little");
    }
}
