package monochord.shell.verb.keeping;

import java.util.Locale;
import monochord.text.Phrase;

/**
 * One thing that was looked at.
 *
 * @param what its name, as in the first column
 * @param key its name for programs
 * @param state how it is, as a clause
 * @param health the same in one word
 * @param advice what to do where it is not well, or nothing
 */
record DoctorFinding(Phrase what, String key, Phrase state, Health health, Phrase advice) {
    /** How a thing is, in one word for programs. */
    enum Health {
        FINE,
        MENDED,
        MISSING,
        BROKEN;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    static DoctorFinding well(Phrase what, String key, Phrase state) {
        return new DoctorFinding(what, key, state, Health.FINE, Phrase.NOTHING);
    }

    static DoctorFinding mended(Phrase what, String key, Phrase state) {
        return new DoctorFinding(what, key, state, Health.MENDED, Phrase.NOTHING);
    }

    static DoctorFinding missing(Phrase what, String key, Phrase state, Phrase advice) {
        return new DoctorFinding(what, key, state, Health.MISSING, advice);
    }

    static DoctorFinding broken(Phrase what, String key, Phrase state, Phrase advice) {
        return new DoctorFinding(what, key, state, Health.BROKEN, advice);
    }

    /** Whether all that wants it can have it. */
    boolean isWell() {
        return health == Health.FINE || health == Health.MENDED;
    }
}
