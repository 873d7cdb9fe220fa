package monochord.practice;

import java.util.Locale;

/** What kind of answer a question wants. */
public enum AnswerForm {
    NOTES,
    CHORD,
    NUMERAL,
    QUALITY,
    NUMBER,
    SIGNATURE,
    INTERVAL,
    PROGRESSION,
    CHOICE,
    VOICING;

    /** In small letters: {@code notes}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
