package monochord.shell.verb.keeping;

import monochord.text.Phrase;

/**
 * One thing that was looked at.
 *
 * @param what its name, as in the first column
 * @param key its name for programs
 * @param state how it is, as a clause
 * @param isWell whether all that wants it can have it
 * @param advice what to do where it is not well, or nothing
 */
record DoctorFinding(Phrase what, String key, Phrase state, boolean isWell, Phrase advice) {
    static DoctorFinding well(Phrase what, String key, Phrase state) {
        return new DoctorFinding(what, key, state, true, Phrase.NOTHING);
    }

    static DoctorFinding missing(Phrase what, String key, Phrase state, Phrase advice) {
        return new DoctorFinding(what, key, state, false, advice);
    }
}
